export * from './flight-acts.js';
export * from './movement-schema.js';
export * from './plan-request.js';
export * from './stock-requests.js';
