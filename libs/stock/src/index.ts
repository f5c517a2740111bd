export * from './drum.js';
export * from './projection.js';
