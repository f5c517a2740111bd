import { createStore } from '../api/store.js';

/** A newer program is on the phone and waits until its pages are closed. */
export const newerProgram = createStore(false);

/**
 * Keeps the whole program for where there is no line, once the first page is there to be used. Only over HTTPS, and on the
 * machine itself: elsewhere the phone needs a line to open, and says so.
 */
export const keepProgram = (): void => {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
  const register = async (): Promise<void> => {
    const kept = await navigator.serviceWorker.register('/phone/sw.js', { scope: '/phone/' });
    const look = (): void => newerProgram.set(kept.waiting !== null && kept.active !== null);
    look();
    kept.addEventListener('updatefound', () => kept.installing?.addEventListener('statechange', look));
  };
  if (document.readyState === 'complete') void register();
  else window.addEventListener('load', () => void register(), { once: true });
};
