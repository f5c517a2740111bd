export * from './drum.js';
