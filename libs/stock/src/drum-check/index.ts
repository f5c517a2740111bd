export * from './density-check.js';
export * from './fuel-quantity.js';
export * from './gauge-check.js';
export * from './ullage.js';
