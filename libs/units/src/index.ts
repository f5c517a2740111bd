export * from './calendar.js';
export * from './convert.js';
export * from './local-time.js';
export * from './print.js';
export * from './quantity.js';
export * from './volume-correction.js';
