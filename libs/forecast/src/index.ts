export * from './daily-use.js';
export * from './normal.js';
export * from './order-quantity.js';
export * from './suggested-minimum.js';
