import { createStore } from '../../../api/index.js';
import type { FormName } from '../acts/flight-acts.js';

/** A form that is to open on the card of a flight; null: none is asked for. */
export const askedForm = createStore<{ readonly flight: string; readonly form: FormName } | null>(null);
