export * from './days-of-cover.js';
export * from './drum.js';
export * from './opening-stock.js';
export * from './project-caches.js';
export * from './projection.js';
export type { StandingDrum } from './standing-drum.js';
