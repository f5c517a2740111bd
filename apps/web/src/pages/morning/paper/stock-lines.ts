import { unlikeItsDrums } from '@drumline/stock';
import { litres } from '@drumline/units';
import { readDrawn } from './draw-line.js';
import { fillDoubts, fillsAreOthers, temperatureIn } from './fill-doubts.js';
import { drumDoubts, inLitres, millilitresOf, placeIn } from './find.js';
import { lossLines } from './loss-lines.js';
import { LineFault, missing, movement, type Reader } from './sheet.js';
import { after, litresOf, sticksIn } from './stick-words.js';
import { toldBy } from './tail.js';

/** "counted LOR 2150 L 10 sealed 1 open 3 empty", or "stick 34 cm" for the litres, a figure an open drum; "air" when it was seen from the air, "seen" when nothing was dipped. */
const readCounted: Reader = (parted, sheet) => {
  const told = toldBy(parted, sheet, null);
  const words = parted.rest.slice(1);
  const place = placeIn(words[0], sheet);
  const [sealed, open, empty] = ['sealed', 'open', 'empty'].map((word) => numberBefore(words, word));
  const dipped = sticksIn(words, sheet);
  const found = dipped === null ? litresOf(words[1]) : sealed! * sheet.fillLitres + dipped.litres;
  const has = (word: string) => words.some((each) => each.toLowerCase() === word);
  const body = {
    ...{ kind: 'counted', ...told, place, millilitres: millilitresOf(found) },
    method: has('seen') ? 'drums seen' : 'dip',
    seenFrom: has('air') ? 'air' : 'ground',
    ...{ sealedDrums: sealed, openDrums: open, emptyDrums: empty },
    ...(dipped !== null && { note: `By stick${dipped.by}.` }),
  };
  if (dipped !== null && dipped.drums !== open)
    missing(`${dipped.drums} read by stick and ${open} open: write a figure for each open drum.`);
  const rules = { fillLitres: litres(sheet.fillLitres), countTolerance: sheet.countTolerance };
  const unlike = unlikeItsDrums({ litres: litres(found), sealedDrums: sealed!, openDrums: open! }, rules);
  return {
    kind: 'entry',
    ...told,
    words: `${place} counted by ${body.method}, from the ${body.seenFrom}: ${inLitres(found)}${dipped?.by ?? ''}, ${sealed} sealed, ${open} open, ${empty} empty`,
    flight: null,
    wanted: [movement(body)],
    doubts: unlike === null ? [] : [`${place}: ${unlike}.`],
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

/** "filled ALD 0491 J27-041 200 L tare 19.7 gross 180.1 temp 12". */
const readFilled: Reader = (parted, sheet) => {
  if (!sheet.mayFill) throw new LineFault(fillsAreOthers);
  const told = toldBy(parted, sheet, null);
  const [, placeWord, drum, batch, ...more] = parted.rest;
  const place = placeIn(placeWord, sheet);
  if (drum === undefined || batch === undefined)
    throw new LineFault('Which drum, from which batch? filled ALD 0491 J27-041 200 L tare 19.7 gross 180.1.');
  const litres = litresOf(more[0]);
  const tareKg = Number(after(more, 'tare') ?? missing('Its tare in kg? Write tare 19.7.'));
  const gross = Number(after(more, 'gross') ?? missing('Its gross weight in kg? Write gross 180.1.'));
  const temperature = temperatureIn(more);
  const doubts = fillDoubts({ batch, litres, tareKg, grossKg: gross, temperature }, sheet);
  return {
    kind: 'entry',
    ...told,
    words: `${drum} filled at ${place} from batch ${batch}: ${litres} L, tare ${tareKg} kg, gross ${gross} kg`,
    flight: null,
    wanted: [
      movement({
        ...{ kind: 'filled', ...told, drum, place, batch, tareKg, grossKg: gross },
        millilitres: millilitresOf(litres),
        ...(temperature === null ? {} : { temperatureC: temperature }),
        ...noteOf([...(temperature === null ? [] : [`At ${temperature} °C.`]), ...doubts]),
      }),
    ],
    doubts,
  };
};

/** What was asked and kept all the same stays with the drum. */
const noteOf = (words: readonly string[]): { readonly note?: string } =>
  words.length === 0 ? {} : { note: words.join(' ') };

export const stockLines: Readonly<Record<string, Reader>> = {
  drawn: readDrawn,
  counted: readCounted,
  slung: readSlung,
  filled: readFilled,
  ...lossLines,
};

const numberBefore = (words: readonly string[], name: string): number => {
  const before = words[words.findIndex((word) => word.toLowerCase() === name) - 1] ?? '';
  return /^\d+$/.test(before) ? Number(before) : missing(`How many ${name} drums? Write 0 ${name} for none.`);
};
