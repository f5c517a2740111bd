import { createStore, useStore } from '../api/store.js';

/** Whether the browser promises to keep what is on the phone. */
export type Promised = 'not asked' | 'yes' | 'no';

const promised = createStore<Promised>('not asked');

export const usePromised = (): Promised => useStore(promised);

/** A browser may clear what a page has kept when space runs short, unless it has promised not to. */
export const askToKeep = async (): Promise<void> => {
  const { storage } = navigator;
  // Without HTTPS a page has no such thing to ask.
  if (storage?.persist === undefined) {
    promised.set('no');
    return;
  }
  promised.set((await storage.persisted()) || (await storage.persist()) ? 'yes' : 'no');
};
