export * from './place.js';
