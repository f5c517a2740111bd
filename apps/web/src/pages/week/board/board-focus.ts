import { createStore } from '../../../api/index.js';

/** Where the keyboard is on the board, and the flight there, if any; null: it is elsewhere. */
export const boardFocus = createStore<{ readonly flight: string | undefined } | null>(null);
