export * from './flight-acts.js';
export * from './plan-request.js';
