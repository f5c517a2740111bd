import type { MovementBody, PhoneFlight } from '@drumline/contract';
import type { Report } from '../../phone/index.js';
import { type Reporter, written } from '../../phone/reporting.js';
import { entry, movement } from '../reports/make-entry.js';
import type { Condition, ReportedDrum } from '../reports/own-reports.js';

/** What was done with one drum. */
export interface DrumDone {
  readonly drum: string;
  readonly kind: 'left at' | 'brought home';
  readonly condition: Condition;
}

/** Where one drum was, and on which leg, from 1. */
interface DrumMoved extends DrumDone {
  readonly place: string;
  readonly leg: number;
  /** Absent: now. */
  readonly happenedAt?: string;
}

/** "3 left at XGAN, 1 brought back". */
export const doneWords = (done: readonly DrumDone[], place: string): string => {
  const left = done.filter(({ kind }) => kind === 'left at').length;
  const back = done.length - left;
  return [
    ...(left > 0 ? [`${left} left at ${place}`] : []),
    ...(back > 0 ? [`${back} brought back`] : []),
  ].join(', ');
};

/** Drum by drum, at a place of the plan or any other; `leg` counted from 1. */
export const drumsDone = (
  reporter: Reporter,
  flight: PhoneFlight,
  { done, place, leg }: { readonly done: readonly DrumDone[]; readonly place: string; readonly leg: number },
): Report =>
  entry(reporter, {
    words: doneWords(done, place),
    flight: flight.id,
    requests: done.map((drum) => movement(reporter, drumMoved(reporter, flight, { ...drum, place, leg }))),
  });

const drumMoved = (
  reporter: Reporter,
  { id, route }: PhoneFlight,
  { drum, kind, condition, place, leg, happenedAt }: DrumMoved,
): MovementBody => {
  const isLeft = kind === 'left at';
  const now = written(reporter);
  return {
    kind,
    ...now,
    happenedAt: happenedAt ?? now.happenedAt,
    drum,
    place: isLeft ? place : route.at(-1)!,
    flight: id,
    // What is not left rides to the end of the flight, wherever it was that nobody took it off.
    leg: isLeft ? leg : route.length - 1,
    condition,
    foundMillilitres: null,
  };
};

/** What was said of one drum, and what is so; null: nothing of it. */
export interface DrumCorrection {
  readonly wrong: ReportedDrum;
  readonly right: Pick<DrumMoved, 'kind' | 'condition' | 'place'> | null;
}

/** Takes reports back and gives the right ones: both stay in the ledger, and only the right ones count. */
export const corrected = (
  reporter: Reporter,
  flight: PhoneFlight,
  corrections: readonly DrumCorrection[],
): Report =>
  entry(reporter, {
    words: `Corrected: ${corrections.map(correctionWords).join(', ')}`,
    flight: flight.id,
    requests: corrections.flatMap((correction) => {
      const { wrong, right } = correction;
      const reversal = movement(reporter, {
        kind: 'corrected',
        ...written(reporter),
        corrects: wrong.id,
        reason: `Reported was: ${saidWords(wrong)}. So it is: ${correctionWords(correction)}.`,
      });
      if (right === null) return [reversal];
      const leg = wrong.kind === 'left at' ? wrong.leg : legTo(flight, right.place);
      const said = { drum: wrong.drum, ...right, leg, happenedAt: wrong.at };
      return [reversal, movement(reporter, drumMoved(reporter, flight, said))];
    }),
  });

/** From 1; a place that is no stop is on the way out. */
const legTo = ({ route }: PhoneFlight, place: string): number => Math.max(1, route.indexOf(place, 1));

/** "0578 left at XGAN, leaking". */
export const saidWords = ({ drum, kind, place, condition }: Omit<DrumMoved, 'leg'>): string =>
  `${drum} ${kind === 'left at' ? `left at ${place}` : 'brought back'}${condition === 'sound' ? '' : `, ${condition}`}`;

const correctionWords = ({ wrong: { drum }, right }: DrumCorrection): string =>
  right === null ? `nothing of ${drum}` : saidWords({ drum, ...right });
