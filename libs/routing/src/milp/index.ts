export { openWithHighs, solveWithHighs } from './highs.js';
export { solveWithJsLpSolver } from './js-lp-solver.js';
export * from './linear-program.js';
export { boundRelaxation } from '../bound/lower-bound.js';
