export type * from './plan.js';
export type * from './problem.js';
