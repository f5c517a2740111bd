import { createStore } from './store.js';

/** Something that a page keeps back for a moment, so that the person can still take it back. */
export interface KeptBack {
  readonly sendNow: () => Promise<void>;
}

/** One at a time; null: nothing is kept back. It counts among the entries that wait. */
export const keptBack = createStore<KeptBack | null>(null);
