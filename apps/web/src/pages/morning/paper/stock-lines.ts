import { readDips } from '../../../counting/dips.js';
import { drumDoubts, isDrumNumber, litresIn, millilitresOf, placeIn } from './find.js';
import { type LineEntry, LineFault, type Sheet, type Wanted } from './sheet.js';
import { type Parted, toldBy } from './tail.js';

type Reader = (parted: Parted, sheet: Sheet) => LineEntry;

/** "drawn ESK 0447 200 L into H1 P1 left 0 L", or "left 34 cm" of the stick: several drums follow each other with their litres. */
const readDrawn: Reader = (parted, sheet) => {
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
  const drawn = pairs(words.slice(1).filter((word, at, all) => !isTaken(word, all[at - 1], sheet)));
  return {
    kind: 'entry',
    ...told,
    words: `${drawn.map(({ drum, litres }) => `${litres} L from ${drum}`).join(', ')} drawn at ${place} into ${into} for ${programme}${left === null ? '' : `, ${left.litres} L left in it${left.by}`}`,
    flight: null,
    wanted: drawn.map(({ drum, litres }) =>
      movement({
        ...{ kind: 'drawn', ...told, drum, place, into, programme },
        ...{
          millilitres: millilitresOf(litres),
          leftMillilitres: left === null ? null : millilitresOf(left.litres),
        },
        ...(isMedevac ? { medevac: parted.because } : {}),
      }),
    ),
    doubts: [
      ...drumDoubts(
        drawn.map(({ drum }) => drum),
        sheet,
      ),
      ...drawn.flatMap(({ drum, litres }) => drawDoubts(drum, litres, { place, sheet })),
    ],
  };
};

/** What the book says otherwise. */
const drawDoubts = (
  number: string,
  litres: number,
  { place, sheet }: { readonly place: string; readonly sheet: Sheet },
): readonly string[] => {
  const drum = sheet.drums.find((each) => each.number === number);
  if (litres > sheet.fillLitres) return [`${litres} L is more than a drum holds, ${sheet.fillLitres} L.`];
  if (drum === undefined) return [];
  return [
    ...(drum.place === place ? [] : [`${number} is at ${drum.place ?? 'no place'} by the book.`]),
    ...(drum.litres < litres ? [`${number} holds ${drum.litres} L by the book.`] : []),
  ];
};

/** "counted LOR 2150 L 10 sealed 1 open 3 empty", or "stick 34 cm" for the litres, a figure an open drum; "air" when it was seen from the air, "seen" when nothing was dipped. */
const readCounted: Reader = (parted, sheet) => {
  const told = toldBy(parted, sheet, null);
  const words = parted.rest.slice(1);
  const place = placeIn(words[0], sheet);
  const [sealed, open, empty] = ['sealed', 'open', 'empty'].map((word) => numberBefore(words, word));
  const dipped = sticksIn(words, sheet);
  const litres = dipped === null ? litresOf(words[1]) : sealed! * sheet.fillLitres + dipped.litres;
  const has = (word: string) => words.some((each) => each.toLowerCase() === word);
  const body = {
    ...{ kind: 'counted', ...told, place, millilitres: millilitresOf(litres) },
    method: has('seen') ? 'drums seen' : 'dip',
    seenFrom: has('air') ? 'air' : 'ground',
    ...{ sealedDrums: sealed, openDrums: open, emptyDrums: empty },
    ...(dipped !== null && { note: `By stick${dipped.by}.` }),
  };
  if (dipped !== null && dipped.drums !== open)
    missing(`${dipped.drums} read by stick and ${open} open: write a figure for each open drum.`);
  const most = (sealed! + open!) * sheet.fillLitres;
  return {
    kind: 'entry',
    ...told,
    words: `${place} counted by ${body.method}, from the ${body.seenFrom}: ${litres} L${dipped?.by ?? ''}, ${sealed} sealed, ${open} open, ${empty} empty`,
    flight: null,
    wanted: [movement(body)],
    doubts: litres > most ? [`${litres} L is more than ${sealed! + open!} drums hold, ${most} L.`] : [],
  };
};

/** "slung ESK MAR H1 0447 0448". */
const readSlung: Reader = (parted, sheet) => {
  const told = toldBy(parted, sheet, null);
  const [, fromWord, toWord, helicopter, ...drums] = parted.rest;
  const [from, to] = [placeIn(fromWord, sheet), placeIn(toWord, sheet)];
  if (helicopter === undefined || drums.length === 0)
    throw new LineFault('Which helicopter and which drums? slung ESK MAR H1 0447 0448.');
  const away = drums.filter((number) =>
    sheet.drums.some((drum) => drum.number === number && drum.place !== from),
  );
  return {
    kind: 'entry',
    ...told,
    words: `${drums.length} slung by ${helicopter} from ${from} to ${to}: ${drums.join(', ')}`,
    flight: null,
    wanted: drums.map((drum) => movement({ kind: 'slung', ...told, drum, helicopter, from, to })),
    doubts: [
      ...drumDoubts(drums, sheet),
      ...away.map((number) => `${number} is not at ${from} by the book.`),
    ],
  };
};

/** "filled ALD 0491 J27-041 200 L tare 19.7 gross 180.1". */
const readFilled: Reader = (parted, sheet) => {
  const told = toldBy(parted, sheet, null);
  const [, placeWord, drum, batch, ...more] = parted.rest;
  const place = placeIn(placeWord, sheet);
  if (drum === undefined || batch === undefined)
    throw new LineFault('Which drum, from which batch? filled ALD 0491 J27-041 200 L tare 19.7 gross 180.1.');
  const litres = litresOf(more[0]);
  const tareKg = Number(after(more, 'tare') ?? missing('Its tare in kg? Write tare 19.7.'));
  const gross = Number(after(more, 'gross') ?? missing('Its gross weight in kg? Write gross 180.1.'));
  const density = (gross - tareKg) / litres;
  return {
    kind: 'entry',
    ...told,
    words: `${drum} filled at ${place} from batch ${batch}: ${litres} L, tare ${tareKg} kg, gross ${gross} kg`,
    flight: null,
    wanted: [
      movement({
        ...{ kind: 'filled', ...told, drum, place, batch, tareKg, grossKg: gross },
        millilitres: millilitresOf(litres),
      }),
    ],
    // product.md, issue 5 item 3: outside of 775 to 840 kg/m3 the drum is suspect.
    doubts:
      density < 0.775 || density > 0.84
        ? [
            `${(gross - tareKg).toFixed(1)} kg in ${litres} L is ${density.toFixed(3)} kg/L: weigh or measure again.`,
          ]
        : [],
  };
};

export const stockLines: Readonly<Record<string, Reader>> = {
  drawn: readDrawn,
  counted: readCounted,
  slung: readSlung,
  filled: readFilled,
};

const movement = (body: Wanted['body']): Wanted => ({ to: 'movements', body });

const missing = (words: string): never => {
  throw new LineFault(words);
};

const litresOf = (word: string | undefined): number =>
  litresIn(word ?? '') ?? missing('How many litres? Write 200 L after it.');

interface ByStick {
  readonly litres: number;
  readonly drums: number;
  /** ", 34 cm in an upright drum": as it is read back. */
  readonly by: string;
}

/** "left 80 L", or "left 34 cm" by the stick. Null: it does not say. */
const leftIn = (words: readonly string[], sheet: Sheet): Omit<ByStick, 'drums'> | null => {
  const said = after(words, 'left');
  if (said === undefined) return null;
  const next = words[words.indexOf(said) + 1]?.toLowerCase();
  if (!/cm$/i.test(said) && next !== 'cm') return { litres: litresOf(said), by: '' };
  return byStick(said, words, sheet);
};

/** The figures after "stick", up to "cm". Null: no stick was read. */
const sticksIn = (words: readonly string[], sheet: Sheet): ByStick | null => {
  const at = words.findIndex((word) => word.toLowerCase() === 'stick');
  if (at < 0) return null;
  const rest = words.slice(at + 1);
  const end = rest.findIndex((word) => /cm$/i.test(word));
  if (end < 0) missing('How deep was the stick wet? Write stick 34 cm, a figure for each open drum.');
  return byStick(rest.slice(0, end + 1).join(' '), words, sheet);
};

/** By the table that the line names with its first word, else by the usual one. */
const byStick = (typed: string, words: readonly string[], { dipTables }: Sheet): ByStick => {
  const said = words.map((word) => word.toLowerCase());
  const table =
    dipTables.find(({ name }) => said.includes(firstWord(name))) ??
    dipTables[0] ??
    missing('No dip table is set: write the litres.');
  const { litres, drums, words: read } = readDips(typed.replace(/\s*cm$/i, ''), table);
  return { litres: litres ?? missing(read), drums, by: `, ${table.name}, ${read}` };
};

const firstWord = (name: string): string => name.split(' ')[0]!.toLowerCase();

const after = (words: readonly string[], name: string): string | undefined =>
  words[words.findIndex((word) => word.toLowerCase() === name) + 1 || words.length];

const numberBefore = (words: readonly string[], name: string): number => {
  const before = words[words.findIndex((word) => word.toLowerCase() === name) - 1] ?? '';
  return /^\d+$/.test(before) ? Number(before) : missing(`How many ${name} drums? Write 0 ${name} for none.`);
};

const isTaken = (word: string, before: string | undefined, { programmes, dipTables }: Sheet): boolean =>
  ['into', 'left', 'for', 'medevac'].includes(word.toLowerCase()) ||
  ['into', 'left'].includes(before?.toLowerCase() ?? '') ||
  /^cm$/i.test(word) ||
  dipTables.some(({ name }) => firstWord(name) === word.toLowerCase()) ||
  programmes.includes(word.toUpperCase());

/** "0447 200 L 0448 50L": drum after drum with its litres. */
const pairs = (words: readonly string[]): readonly { drum: string; litres: number }[] => {
  const figures = words.filter((word) => word.toUpperCase() !== 'L');
  const found = [];
  for (let at = 0; at < figures.length; at += 2) {
    const [drum, typed] = [figures[at]!, figures[at + 1] ?? ''];
    const litres = litresIn(typed);
    if (litres === null || !isDrumNumber(drum))
      throw new LineFault(`How many litres from ${drum}? Write 200 L after it.`);
    found.push({ drum, litres });
  }
  return found.length > 0 ? found : missing('Which drum, and how many litres? 0447 200 L.');
};
