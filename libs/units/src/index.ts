export * from './calendar.js';
export * from './quantity.js';
