import { nearNumbers } from '@drumline/loading';
import { printNumber } from '@drumline/units';
import { placesMeant } from '../../../radio/places-meant.js';
import { LineFault, type Sheet, type SheetFlight } from './sheet.js';

export const placeIn = (word: string | undefined, { places }: Sheet): string => {
  if (word === undefined) throw new LineFault('Where? Write the place after it: LOR.');
  const meant = placesMeant(word, places);
  if (meant.length === 1) return meant[0]!;
  const said = word.toUpperCase();
  throw new LineFault(
    meant.length > 1
      ? `${said} may be ${meant.join(' or ')}: write the whole code.`
      : `${said} is no strip, pad or base.`,
  );
};

export const isPlace = (word: string, { places }: Sheet): boolean => placesMeant(word, places).length > 0;

/** A number as it is painted on a drum, or a provisional one. */
export const isDrumNumber = (word: string): boolean => /^[A-Z]*-?\d[A-Z0-9-]*$/i.test(word);

/** What is asked about the drums of a line; each is kept as it is written. */
export const drumDoubts = (
  numbers: readonly string[],
  sheet: Sheet,
  flight?: SheetFlight,
): readonly string[] => {
  const twice = numbers.find((number, at) => numbers.indexOf(number) < at);
  const onLoad = flight?.loads.flatMap(({ drum }) => drum ?? []) ?? [];
  return [
    ...(twice === undefined ? [] : [`${twice} is written twice.`]),
    ...numbers.flatMap((number) => {
      if (onLoad.includes(number)) return [];
      const book = sheet.drums.map((drum) => drum.number);
      if (!book.includes(number)) return [inNoBook(number, onLoad.length > 0 ? onLoad : book)];
      if (flight !== undefined && onLoad.length > 0)
        return [`${number} is not on the load of ${flight.id}${meant(number, onLoad)}`];
      return [];
    }),
  ];
};

const inNoBook = (number: string, among: readonly string[]): string => {
  const near = nearNumbers(number, among).slice(0, 3);
  const nearest = near.length === 0 ? 'none is near it' : `nearest ${near.join(', ')}`;
  return `${number} is in no book: ${nearest}. Kept so, it is an unknown drum, and nobody knows what is in it.`;
};

const meant = (number: string, among: readonly string[]): string => {
  const near = nearNumbers(number, among).slice(0, 3);
  return near.length === 0 ? '.' : `: ${near.join(' or ')}?`;
};

export const litresIn = (word: string): number | null => {
  const read = /^(\d+(?:\.\d+)?)L?$/i.exec(word);
  return read === null ? null : Number(read[1]);
};

/** "2,116 L". */
export const inLitres = (amount: number): string =>
  `${printNumber(amount, Number.isInteger(amount) ? 0 : 1)} L`;

export const millilitresOf = (litres: number): number => Math.round(litres * 1000);
