import { printNumber } from '@drumline/units';
import { drumDoubts, isDrumNumber, placeIn } from './find.js';
import { type LineEntry, LineFault, type Sheet, type SheetFlight } from './sheet.js';
import { type Parted, toldBy } from './tail.js';

/** "F06 loaded 06:50 load 2378/2378 lb take-off 8528/8528 lb code U9XA 0572 0574": no drum named, those that were set aside. */
export const readLoaded = (parted: Parted, sheet: Sheet, flight: SheetFlight): LineEntry => {
  const told = toldBy(parted, sheet, flight.pilot);
  const { code, rest: words } = withoutCode(parted.rest.slice(2));
  const load = pairAfter(words, ['load']);
  const takeOff = pairAfter(words, ['take-off', 'takeoff']);
  const drums = drumsAboard(words, sheet, flight);
  const version = Number(
    /^v(\d+)$/i.exec(words.find((each) => /^v\d+$/i.test(each)) ?? '')?.[1] ?? flight.version,
  );
  const isApart = load[0] !== load[1] || takeOff[0] !== takeOff[1];
  const bySoftFigures = words.some((each) => each.toLowerCase() === 'soft');
  return {
    kind: 'entry',
    ...told,
    words: `${flight.id} loaded by version ${version} with ${drums.map(aboardWords).join(', ')}; load ${load[0]} lb by the sheet, ${load[1]} lb by hand; take-off ${takeOff[0]} lb by the sheet, ${takeOff[1]} lb by the aircraft${bySoftFigures ? '; by the soft figures' : ''}${code === null ? '' : `; check code ${code}`}`,
    flight: flight.id,
    wanted: [
      {
        to: 'flight-reports',
        body: {
          ...{ kind: 'load', flight: flight.id, ...told, version, drums, bySoftFigures },
          ...(code === null ? {} : { checkCode: code }),
          totals: {
            load: { bySheetLb: load[0], byHandLb: load[1] },
            takeOff: { bySheetLb: takeOff[0], byAircraftLb: takeOff[1] },
          },
          ...(isApart && parted.because !== null && parted.second !== null
            ? { signed: { by: told.by, second: parted.second, reason: parted.because } }
            : {}),
        },
      },
    ],
    doubts: [
      ...(isApart && (parted.because === null || parted.second === null)
        ? [
            'Two totals differ: over the tolerance two people sign, the commander and one who has seen both figures. End with: by FW1 with S. Keeper because and the reason.',
          ]
        : []),
      ...drumDoubts(
        drums.map(({ drum }) => drum),
        sheet,
        flight,
      ),
      ...weightDoubts(drums, sheet, flight),
    ],
  };
};

/** Base's sheet counts a drum that no book has with what its crew says it weighs. */
const weightDoubts = (drums: readonly AboardByPaper[], sheet: Sheet, { loads }: SheetFlight) =>
  drums.flatMap(({ drum, grossKg }) => {
    const isKnown = [...sheet.drums.map(({ number }) => number), ...loads.map((load) => load.drum)].includes(
      drum,
    );
    return isKnown || grossKg !== undefined
      ? []
      : [
          `On the sheet ${drum} counts as planned: if the crew says what it weighs, write ${drum} weighs 190 kg.`,
        ];
  });

/** The check code of the sheet as it is written on it, and the line without it: four signs may be figures, as a drum's. */
const withoutCode = (words: readonly string[]) => {
  const at = words.findIndex((word) => word.toLowerCase() === 'code');
  if (at < 0) return { code: null, rest: words };
  const code = (words[at + 1] ?? '').toUpperCase();
  if (!/^[A-Z0-9]{4}$/.test(code))
    throw new LineFault('Which check code? The four signs in the corner of the sheet: code U9XA.');
  return { code, rest: words.toSpliced(at, 2) };
};

/** Both figures of a pair, in lb: by the sheet, and by the other hand. */
const pairAfter = (words: readonly string[], names: readonly string[]): readonly [number, number] => {
  const at = words.findIndex((word) => names.includes(word.toLowerCase()));
  const read = /^(\d{2,6})\/(\d{2,6})(lb|kg)?$/i.exec(words[at + 1] ?? '');
  const other = names[0] === 'load' ? 'by hand: load 2378/2378 lb' : 'by the aircraft: take-off 8528/8528 lb';
  if (at < 0 || read === null) throw new LineFault(`Write both totals in lb, by the sheet and ${other}.`);
  const unit = (read[3] ?? words[at + 2] ?? '').toLowerCase();
  if (unit === 'lb') return [Number(read[1]), Number(read[2])];
  throw new LineFault(
    unit === 'kg'
      ? `The sheet adds up in lb: read the ${names[0]} in lb, by the sheet and ${other}.`
      : `${read[0]} what? Write lb after it, if it is lb: ${names[0]} ${read[0]} lb.`,
  );
};

const aboardWords = ({ drum, grossKg }: AboardByPaper): string =>
  grossKg === undefined ? drum : `${drum} (${printNumber(grossKg, 1)} kg)`;

interface AboardByPaper {
  readonly drum: string;
  readonly to: string;
  readonly grossKg?: number;
}

/** "9999 weighs 190 kg": what the crew says of a drum that no book has. */
const weightAfter = (words: readonly string[], at: number): { readonly grossKg?: number } => {
  if (words[at + 1]?.toLowerCase() !== 'weighs') return {};
  const read = /^(\d{2,3}(?:\.\d+)?)(kg)?$/i.exec(words[at + 2] ?? '');
  if (read === null || (read[2] ?? words[at + 3])?.toLowerCase() !== 'kg')
    throw new LineFault(
      `What does ${words[at]} weigh, drum and fuel? In kg, and kg after it: ${words[at]} weighs 190 kg.`,
    );
  return { grossKg: Number(read[1]) };
};

const drumsAboard = (words: readonly string[], sheet: Sheet, { id, stops, loads }: SheetFlight) => {
  const named: AboardByPaper[] = [];
  let to = stops.length === 1 ? stops[0]!.place : null;
  words.forEach((word, at) => {
    if (word.toLowerCase() === 'to') to = placeIn(words[at + 1], sheet);
    const isFigure = ['load', 'take-off', 'takeoff', 'to', 'weighs'].includes(
      words[at - 1]?.toLowerCase() ?? '',
    );
    if (isFigure || !isDrumNumber(word) || /^v\d+$/i.test(word)) return;
    const planned = loads.find(({ drum }) => drum === word)?.place ?? to;
    if (planned === null)
      throw new LineFault(`To which stop of ${id} does ${word} go? Write to GAN before it.`);
    named.push({ drum: word, to: planned, ...weightAfter(words, at) });
  });
  if (named.length > 0) return named;
  const aside = loads.flatMap(({ drum, place }): AboardByPaper[] =>
    drum === null ? [] : [{ drum, to: place }],
  );
  if (aside.length > 0) return aside;
  throw new LineFault(`No drum was set aside for ${id}: write the numbers of those aboard.`);
};
