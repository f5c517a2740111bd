export { CrewHours } from './crews/crew-hours.js';
export type * from './plan.js';
export * from './pool/build-pool.js';
export type * from './problem.js';
export * from './solvers/search/search.js';
