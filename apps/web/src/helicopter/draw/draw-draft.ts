import type { DrumToOpen } from '@drumline/stock';
import type { CacheView } from '../cache-view.js';

/** A draw that somebody has begun: looked at, typed, not kept. */
export interface DrawDraft {
  /** Drums that may be pumped, in the order in which they were looked at. */
  readonly drums: readonly string[];
  /** The drum that is looked at now; null: none. */
  readonly checking: string | null;
  readonly ticked: readonly string[];
  readonly isRejecting: boolean;
  readonly litres: string;
  readonly beforeLb: string;
  readonly afterLb: string;
  /** Wetted stick in the drum that stays open, and the table by which it is read; absent: nobody looked. */
  readonly leftCm?: string;
  readonly dipTable?: string | null;
  /** Null: that of the day. */
  readonly programme: string | null;
  /** Why the reserve may be drawn; null: no medevac. */
  readonly medevac: string | null;
  /** Into the reserve, and for no medevac. */
  readonly isDrawnAllTheSame: boolean;
}

/** A drum that is not to be opened was opened already: there is nothing left to look at. */
export const draftFor = (row: DrumToOpen | undefined, number: string): DrawDraft => ({
  drums: row?.fitness === 'fit' ? [] : [number],
  checking: row?.fitness === 'fit' ? number : null,
  ticked: [],
  isRejecting: false,
  litres: '',
  beforeLb: '',
  afterLb: '',
  programme: null,
  medevac: null,
  isDrawnAllTheSame: false,
});

export const rowsOf = ({ fit, notFit }: CacheView, numbers: readonly string[]): readonly DrumToOpen[] => {
  const all = [...fit, ...notFit];
  return numbers.flatMap((number) => all.find(({ drum }) => drum.number === number) ?? []);
};

/** The next to open that is not among them. */
export const nextToOpen = ({ fit }: CacheView, numbers: readonly string[]): DrumToOpen | undefined =>
  fit.find(({ drum }) => !numbers.includes(drum.number));
