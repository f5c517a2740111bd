import type { Rule } from '../rule.js';

/** What looks wrong but may be right. */
export const doubtRules: readonly Rule[] = [];
