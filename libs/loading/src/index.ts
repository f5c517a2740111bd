export * from './aircraft-type.js';
