export * from './closures.js';
export * from './distance.js';
export * from './expected-surface.js';
export * from './flying-hours.js';
export * from './place.js';
export * from './sun.js';
export * from './wind.js';
