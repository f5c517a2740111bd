import type { SlingRemedy } from '../../slings/sling-remedy.js';

/** A line of "Decide now". */
export interface DecideRow {
  readonly key: string;
  /** Latest time, or since when it waits. */
  readonly time: string;
  readonly head: string;
  /** After the head: the state, in words. */
  readonly state: string;
  readonly needsDecision: boolean;
  readonly words: string;
  readonly act:
    | { readonly kind: 'open'; readonly label: string; readonly path: string }
    | { readonly kind: 'agree'; readonly proposal: string; readonly mayAgree: boolean }
    /** `path`: the cache that it is about. */
    | { readonly kind: 'seen'; readonly raised: string; readonly path?: string }
    | { readonly kind: 'move sling'; readonly remedy: SlingRemedy; readonly path: string };
  /** A flight that may be planned again. */
  readonly canReplan: boolean;
}
