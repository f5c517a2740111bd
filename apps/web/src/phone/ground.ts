import { createStore, useStore } from '../api/store.js';

type Ground = 'light' | 'dim';

const name = 'drumline.ground';
const ground = createStore<Ground>(localStorage.getItem(name) === 'dim' ? 'dim' : 'light');

/** Before the first picture, so that a dark cabin stays dark. */
export const showGround = (): void => {
  document.documentElement.dataset.ground = ground.get();
};

/** Chosen by hand and kept; it never follows the clock. */
export const useGround = (): [Ground, () => void] => [
  useStore(ground),
  () => {
    const next = ground.get() === 'dim' ? 'light' : 'dim';
    ground.set(next);
    localStorage.setItem(name, next);
    showGround();
  },
];
