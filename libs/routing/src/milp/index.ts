export type { BoundOptions, BoundProgress, RelaxationBound } from '../bound/lower-bound.js';
export { promisingRoutes } from '../bound/promising-patterns.js';
export { openWithHighs, solveWithHighs } from './highs.js';
export { solveWithJsLpSolver } from './js-lp-solver.js';
export * from './linear-program.js';
export * from './polish.js';
export { relaxationBound } from './relaxation-bound.js';
