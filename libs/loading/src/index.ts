export * from './aircraft-type.js';
export * from './route-load.js';
