export * from './base-supply.js';
export * from './drum.js';
export * from './expiry-losses.js';
export * from './hold.js';
export * from './opening-stock.js';
export * from './pick-drums.js';
export * from './project-caches.js';
export * from './projection.js';
export type { StandingDrum } from './standing-drum.js';
