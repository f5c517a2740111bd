import type { Cell } from './parts.js';

/** A part of a print, whichever it is: what is looked into. */
export interface AnyPart {
  readonly text?: unknown;
  readonly stack?: readonly Cell[];
  readonly columns?: readonly Cell[];
  readonly table?: { readonly body: readonly (readonly Cell[])[] };
  readonly fontSize?: number;
}
