import type { Rule } from './rule.js';

/** Every check across the document; each says all the faults that it finds. */
export const scenarioRules: readonly Rule[] = [];
