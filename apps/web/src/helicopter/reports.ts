import type { MovementBody } from '@drumline/contract';
import { millilitresOf, type SplitDraw } from '@drumline/stock';
import { type Litres, litres, print } from '@drumline/units';
import type { KeptRequest, Report } from '../phone/index.js';
import { type Reporter, written } from '../phone/reporting.js';
import { type Revocable, takenBackOf } from './take-back.js';

export interface DrawReport {
  readonly place: string;
  readonly helicopter: string;
  readonly split: SplitDraw;
  readonly programme: string;
  /** In the drum that stays open, by the stick; null: nobody looked. */
  readonly leftByStick: Litres | null;
  /** Why the medevac reserve may be drawn; null: a routine draw. */
  readonly medevac: string | null;
  /** What was looked at before pumping, or why it was drawn all the same. */
  readonly note: string;
}

/** One press, one entry; one movement a drum. */
export const drawReport = (reporter: Reporter, draw: DrawReport): Report => {
  const { place, split, helicopter, programme, leftByStick, medevac, note } = draw;
  const all = litres(millilitresOf(litres(split.draws.reduce((sum, each) => sum + each.litres, 0))) / 1000);
  return report(
    reporter,
    `${print(all, 'L', Number.isInteger(all) ? 0 : 1)} drawn at ${place} from ${split.draws.map(({ number }) => number).join(', ')}${medevac === null ? '' : ', medevac'}`,
    split.draws.map((each) => ({
      kind: 'drawn',
      ...written(reporter, note),
      drum: each.number,
      place,
      millilitres: millilitresOf(each.litres),
      into: helicopter,
      programme,
      // Worked out, unless somebody has looked.
      leftMillilitres: each.leftLitres > 0 && leftByStick !== null ? millilitresOf(leftByStick) : null,
      ...(medevac === null ? {} : { medevac }),
    })),
  );
};

export const rejectReport = (reporter: Reporter, drum: string, why: string): Report =>
  report(reporter, `${drum} rejected: ${why}`, [
    {
      kind: 'held',
      ...written(reporter),
      of: { drum },
      reason: `rejected before pumping: ${why}; marked X`,
    },
  ]);

export interface Lift {
  readonly helicopter: string;
  readonly from: string;
  readonly to: string;
  readonly drums: readonly string[];
}

export const setDownReport = (reporter: Reporter, { helicopter, from, to, drums }: Lift): Report =>
  report(
    reporter,
    `${counted(drums)} set down at ${to} from ${from}: ${drums.join(', ')}`,
    drums.map((drum) => ({ kind: 'slung', ...written(reporter, 'one lift'), drum, helicopter, from, to })),
  );

/** Nobody knows where they are: base has to ask. */
export const droppedReport = (reporter: Reporter, { helicopter, from, to, drums }: Lift): Report =>
  report(
    reporter,
    `${counted(drums)} dropped between ${from} and ${to}: ${drums.join(', ')}`,
    drums.map((drum) => ({
      kind: 'lost',
      ...written(reporter, `Dropped from under ${helicopter} between ${from} and ${to}.`),
      drum,
      place: from,
    })),
  );

export interface TakenBack {
  /** What was wrong of the report. */
  readonly movements: readonly Revocable[];
  readonly reason: string;
}

/** The first report stays written; what is so is reported after it. */
export const takeBackReport = (reporter: Reporter, { movements, reason }: TakenBack): Report =>
  report(
    reporter,
    `Taken back: ${movements.map(takenBackOf).join('; ')}`,
    movements.map(({ id }) => ({ kind: 'corrected', ...written(reporter), corrects: id, reason })),
  );

export interface CountReport {
  readonly place: string;
  readonly seenFrom: 'ground' | 'air';
  readonly sealedDrums: number;
  readonly openDrums: number;
  readonly emptyDrums: number;
  /** In the open drums together; null: nobody looked into them. */
  readonly openLitres: Litres | null;
  /** What was read off the stick; absent: litres were written. */
  readonly words?: string;
  readonly fillLitres: Litres;
}

/** What was seen, in litres; an open drum into which nobody has looked counts as nothing. */
export const litresSeen = ({ sealedDrums, fillLitres, openLitres }: CountReport): Litres =>
  litres(sealedDrums * fillLitres + (openLitres ?? 0));

export const countReport = (reporter: Reporter, count: CountReport): Report => {
  const { place, seenFrom, sealedDrums, openDrums, emptyDrums, openLitres, words } = count;
  return report(reporter, `Count at ${place}: ${print(litresSeen(count), 'L')}, seen from the ${seenFrom}`, [
    {
      kind: 'counted',
      ...written(reporter, words),
      place,
      method: openDrums > 0 && openLitres !== null ? 'dip' : 'drums seen',
      seenFrom,
      millilitres: millilitresOf(litresSeen(count)),
      sealedDrums,
      openDrums,
      emptyDrums,
    },
  ]);
};

const report = (reporter: Reporter, words: string, movements: readonly MovementBody[]): Report => ({
  words,
  flight: null,
  by: reporter.by,
  clock: reporter.clock,
  requests: movements.map((body): KeptRequest => ({ path: `/api/movements/${reporter.newId()}`, body })),
});

const counted = ({ length }: readonly string[]): string => (length === 1 ? '1 drum' : `${length} drums`);
