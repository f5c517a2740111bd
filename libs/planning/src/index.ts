export type * from './flight-plan.js';
export type * from './scenario.js';
