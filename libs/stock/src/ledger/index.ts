export type * from './ledger-state.js';
export * from './millilitres.js';
export type * from './movement.js';
export type * from './raised.js';
