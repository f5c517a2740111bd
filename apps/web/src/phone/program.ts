import { keepProgram } from '../api/keep-program.js';
import { createStore } from '../api/store.js';

/** A newer program is on the phone and waits until its pages are closed. */
export const newerProgram = createStore(false);

export const keepPhone = async (): Promise<void> => {
  const kept = await keepProgram('/phone/sw.js', '/phone/');
  if (kept === undefined) return;
  const look = (): void => newerProgram.set(kept.waiting !== null && kept.active !== null);
  look();
  kept.addEventListener('updatefound', () => kept.installing?.addEventListener('statechange', look));
};
