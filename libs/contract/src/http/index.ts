export type * from './drum-lists-answer.js';
export * from './flight-acts.js';
export * from './flight-report.js';
export * from './movement-schema.js';
export { type PagePath, pagePaths } from './page-paths.js';
export * from './plan-request.js';
export type * from './projection-answer.js';
export * from './stock-requests.js';
export type * from './week-answer.js';
