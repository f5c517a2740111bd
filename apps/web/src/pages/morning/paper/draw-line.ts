import { openedOutOfOrder } from '@drumline/stock';
import { type KilogramsPerLitre, kilogramsFromPounds, pounds, volumeOf } from '@drumline/units';
import { gaugeDoubts, lookedAt, noteOf } from './draw-note.js';
import { drumDoubts, inLitres, isDrumNumber, millilitresOf, placeIn } from './find.js';
import { LineFault, missing, movement, type Reader, type Sheet } from './sheet.js';
import { after, firstWord, leftIn } from './stick-words.js';
import { toldBy } from './tail.js';

/** "drawn ESK 0447 200 L into H1 P1 left 0 L", or "left 34 cm" of the stick: several drums follow each other with their litres. */
export const readDrawn: Reader = (parted, sheet) => {
  const told = toldBy(parted, sheet, null);
  const words = parted.rest.slice(1);
  const place = placeIn(words[0], sheet);
  const into = after(words, 'into') ?? missing('Into which aircraft? Write into H1.');
  const programme =
    words.find((word) => sheet.programmes.includes(word.toUpperCase()))?.toUpperCase() ??
    missing(`For which programme? ${sheet.programmes.join(', ')}.`);
  const left = leftIn(words, sheet);
  const isMedevac = words.some((word) => word.toLowerCase() === 'medevac');
  if (isMedevac && parted.because === null)
    missing('A medevac draw says why: end with because and the reason.');
  const looked = lookedAt(words);
  const drawn = pairs(
    looked.rest.slice(1).filter((word, at, all) => !isTaken(word, all[at - 1], sheet)),
    sheet.bookDensityKgPerLitre,
  );
  const note = noteOf(looked, isMedevac ? null : parted.because);
  const all = drawn.reduce((sum, { litres }) => sum + litres, 0);
  return {
    kind: 'entry',
    ...told,
    words: `${drawn.map(({ drum, litres, lb }) => `${inLitres(litres)}${lb === null ? '' : ` (${lb} lb)`} from ${drum}`).join(', ')} drawn at ${place} into ${into} for ${programme}${left === null ? '' : `, ${inLitres(left.litres)} left in it${left.by}`}${note === null ? '' : `; ${note}`}`,
    flight: null,
    wanted: drawn.map(({ drum, litres }) =>
      movement({
        ...{ kind: 'drawn', ...told, drum, place, into, programme },
        ...{
          millilitres: millilitresOf(litres),
          leftMillilitres: left === null ? null : millilitresOf(left.litres),
        },
        ...(isMedevac ? { medevac: parted.because } : {}),
        ...(note === null ? {} : { note }),
      }),
    ),
    doubts: [
      ...drumDoubts(
        drawn.map(({ drum }) => drum),
        sheet,
      ),
      ...drawn.flatMap(({ drum, litres }) => drawDoubts(drum, litres, { place, sheet })),
      ...orderDoubts(drawn, { place, sheet, because: parted.because }),
      ...gaugeDoubts(looked, all, sheet.bookDensityKgPerLitre),
    ],
  };
};

/** As the phone asks before the drum is opened; why it was another is written at the end of the line. */
const orderDoubts = (
  drawn: readonly DrawnFrom[],
  {
    place,
    sheet,
    because,
  }: { readonly place: string; readonly sheet: Sheet; readonly because: string | null },
): readonly string[] => {
  if (because !== null) return [];
  const there = sheet.drums.filter((drum) => drum.place === place && drum.litres > 0);
  const opened = drawn.map(({ drum }) => drum);
  return openedOutOfOrder(opened, there, sheet.day).map(
    ({ number, first }) =>
      `${first} comes before ${number}: it is part used or older. If it was ${number}, end with because and why.`,
  );
};

/** What the book says otherwise. */
const drawDoubts = (
  number: string,
  litres: number,
  { place, sheet }: { readonly place: string; readonly sheet: Sheet },
): readonly string[] => {
  const drum = sheet.drums.find((each) => each.number === number);
  if (litres > sheet.fillLitres)
    return [`${inLitres(litres)} is more than a drum holds, ${inLitres(sheet.fillLitres)}.`];
  if (drum === undefined) return [];
  return [
    ...(drum.place === place ? [] : [`${number} is at ${drum.place ?? 'no place'} by the book.`]),
    ...(drum.litres < litres ? [`${number} holds ${inLitres(drum.litres)} by the book.`] : []),
  ];
};

const isTaken = (word: string, before: string | undefined, { programmes, dipTables }: Sheet): boolean =>
  ['into', 'left', 'for', 'medevac'].includes(word.toLowerCase()) ||
  ['into', 'left'].includes(before?.toLowerCase() ?? '') ||
  /^cm$/i.test(word) ||
  dipTables.some(({ name }) => firstWord(name) === word.toLowerCase()) ||
  programmes.includes(word.toUpperCase());

interface DrawnFrom {
  readonly drum: string;
  readonly litres: number;
  /** As it was written; null: litres were. */
  readonly lb: number | null;
}

/** "0447 200 L 0448 50L", or "0447 353 lb": drum after drum with what was drawn, and its unit. */
const pairs = (words: readonly string[], density: KilogramsPerLitre): readonly DrawnFrom[] => {
  const figures = words
    .join(' ')
    .replace(/(\d)\s+(L|lb)(?=\s|$)/gi, '$1$2')
    .split(' ')
    .filter(Boolean);
  const found: DrawnFrom[] = [];
  for (let at = 0; at < figures.length; at += 2) {
    const [drum, typed] = [figures[at]!, figures[at + 1] ?? ''];
    const read = /^(\d+(?:\.\d+)?)(L|lb)?$/i.exec(typed);
    if (read === null || !isDrumNumber(drum))
      throw new LineFault(`How many litres from ${drum}? Write 200 L after it.`);
    const [, figure, unit] = read;
    if (unit === undefined)
      throw new LineFault(`${figure} what from ${drum}, L or lb? Write ${figure} L, or ${figure} lb.`);
    const lb = unit.toLowerCase() === 'lb' ? Number(figure) : null;
    const litres = lb === null ? Number(figure) : volumeOf(kilogramsFromPounds(pounds(lb)), density);
    found.push({ drum, litres: Math.round(litres * 10) / 10, lb });
  }
  return found.length > 0 ? found : missing('Which drum, and how many litres? 0447 200 L.');
};
