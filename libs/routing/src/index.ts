export type * from './plan.js';
export * from './pool/build-pool.js';
export type * from './problem.js';
