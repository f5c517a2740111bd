export type { BoundOptions, BoundProgress, RelaxationBound } from '../bound/lower-bound.js';
export { openWithHighs, solveWithHighs } from './highs.js';
export * from './horizon-start.js';
export { solveWithJsLpSolver } from './js-lp-solver.js';
export * from './linear-program.js';
export * from './lower-bound.js';
export { highsOpenMethods, proveOpenRoutes } from './open-routes-program.js';
export * from './polish.js';
export * from './solve-methods.js';
