import { createStore, useStore } from '../api/index.js';

const isOpen = createStore(false);

/** For a button of a page; the key is `r` everywhere. */
export const openRadioLine = (): void => isOpen.set(true);

export const closeRadioLine = (): void => isOpen.set(false);

export const useRadioLineOpen = (): boolean => useStore(isOpen);
