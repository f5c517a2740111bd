export type * from './scenario.js';
