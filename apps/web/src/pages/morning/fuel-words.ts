import { inWords } from '../../ui/index.js';
import type { Morning } from './morning-read.js';

type Fuel = Morning['fuel'][number];

/** Of a place with nothing usable: "XMAR 600 L, all on HOLD", "XJUN none by the book". */
export const nothingUsableWords = ({
  place,
  bookLitres,
  heldLitres,
  pastRetestLitres,
}: Pick<Fuel, 'place' | 'bookLitres' | 'heldLitres' | 'pastRetestLitres'>): string => {
  if (bookLitres <= 0) return `${place} none by the book`;
  const all = inWords(bookLitres, 'L');
  if (heldLitres >= bookLitres) return `${place} ${all}, all on HOLD`;
  const off = [
    ...(heldLitres > 0 ? [`${inWords(heldLitres, 'L')} on HOLD`] : []),
    ...(pastRetestLitres > 0 ? [`${inWords(pastRetestLitres, 'L')} past retest`] : []),
  ];
  return `${place} ${[all, ...off].join(', ')}${off.length === 0 ? ', and the count found none' : ''}`;
};

/** "46 filled drums fit, 14 on HOLD". */
export const drumsAtBaseWords = ({
  usableDrums,
  heldDrums,
  pastRetestDrums,
}: Pick<Morning['bases'][number], 'usableDrums' | 'heldDrums' | 'pastRetestDrums'>): string =>
  [
    `${inWords(usableDrums, 'drums')} fit`,
    ...(heldDrums > 0 ? [`${heldDrums} on HOLD`] : []),
    ...(pastRetestDrums > 0 ? [`${pastRetestDrums} past retest`] : []),
  ].join(', ');
