import type { DrumToOpen } from '@drumline/stock';
import { dateWords } from '@drumline/units';
import { inWords } from '../../../ui/index.js';
import type { Cache } from '../caches-read.js';

/** "0447, 80 L, part used", "0503, 200 L, HOLD". */
export const drumWords = ({ drum, fitness }: DrumToOpen): string =>
  [
    drum.number,
    inWords(drum.litres, 'L'),
    ...(drum.content === 'part used' ? ['part used'] : []),
    ...(fitness === 'held' ? ['HOLD'] : fitness === 'past retest' ? ['past retest'] : []),
  ].join(', ');

/** A draw as it is written down, from one drum of a cache. */
export interface DrawWritten {
  readonly cache: Cache;
  /** The drums there in the order of use. */
  readonly drums: readonly DrumToOpen[];
  readonly number: string;
  readonly litres: number | undefined;
  readonly isMedevac: boolean;
}

interface DrawSaid {
  /** What the cache has after it, and the drum that comes first; undefined: nothing written yet. */
  readonly words: string | undefined;
  /** What can hardly be so, or should not have been: asked before it is kept, as it has happened. */
  readonly doubts: readonly string[];
}

export const drawSaid = (written: DrawWritten): DrawSaid => {
  const chosen = written.drums.find(({ drum }) => drum.number === written.number);
  const { litres } = written;
  if (chosen === undefined) return { words: undefined, doubts: [] };
  const doubts = unfitWords(chosen);
  const first = openFirst(written, chosen);
  if (litres === undefined) return { words: first, doubts };
  const { usableLitres } = written.cache.stock;
  // What is not fit is in no usable litre, and no drum gives more than it holds.
  const ofUsable = chosen.fitness === 'fit' ? Math.min(litres, chosen.drum.litres) : 0;
  const left = usableLitres - ofUsable;
  return {
    words: [
      `Leaves ${inWords(left, 'L')} usable.`,
      ...(chosen.fitness === 'fit' ? [] : [`${chosen.drum.number} was not in that figure.`]),
      ...(first === undefined ? [] : [first]),
    ].join(' '),
    doubts: [...doubts, ...tooMuchWords(chosen, litres), ...reserveWords(written, left, ofUsable)],
  };
};

const unfitWords = ({ drum: { number }, fitness, hold, batch }: DrumToOpen): readonly string[] => {
  if (fitness === 'held')
    return [
      `HOLD: ${number} is held, ${hold?.reason ?? 'no reason given'}. Pump no more of it; fuel quality has to hear of it.`,
    ];
  return fitness === 'past retest'
    ? [`${number} is past its retest date, ${dateWords(batch.retestDue)}. Pump no more of it.`]
    : [];
};

/** A part-used drum that is fit is opened before any sealed one. */
const openFirst = ({ drums: [first] }: DrawWritten, { drum, fitness }: DrumToOpen): string | undefined =>
  first?.fitness === 'fit' &&
  first.drum.content === 'part used' &&
  fitness === 'fit' &&
  drum.content !== 'part used'
    ? `${first.drum.number} is open already and comes before ${drum.number}.`
    : undefined;

const tooMuchWords = ({ drum }: DrumToOpen, litres: number): readonly string[] =>
  litres > drum.litres
    ? [
        `${drum.number} holds ${inWords(drum.litres, 'L')} by the book, and ${inWords(litres, 'L')} is written: another drum too, or a slip?`,
      ]
    : [];

const reserveWords = (
  { cache: { medevacReserveLitres }, isMedevac }: DrawWritten,
  left: number,
  ofUsable: number,
): readonly string[] => {
  const out = Math.min(ofUsable, medevacReserveLitres - left);
  if (out <= 0 || isMedevac) return [];
  return [
    `${inWords(out, 'L')} of it are the medevac reserve of ${inWords(medevacReserveLitres, 'L')}: say why below if it was a medevac.`,
  ];
};
