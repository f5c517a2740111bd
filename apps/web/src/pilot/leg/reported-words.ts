import type { PhoneFlight } from '@drumline/contract';
import type { ReportedDrum } from '../reports/own-reports.js';
import { drumsOnLeg, type LegWords, leaveOf } from './leg-words.js';

/** What stands at the end of a leg once this phone has reported drums there. */
export interface ReportedWords {
  readonly aboard: readonly string[];
  readonly left: readonly string[];
  /** "Left here: 0578. Left at XCIN: 0579", each where it lies; empty: none was. */
  readonly leftWords: string;
  /** So many are to go home. */
  readonly back: number;
  readonly leave: LegWords['leave'];
}

interface Reported {
  /** The flight before any report. */
  readonly planned: PhoneFlight;
  readonly reported: readonly ReportedDrum[];
  readonly softCounts: boolean;
}

/** By what is still aboard; null: nothing was reported on this leg, and the plan stands. `flight`: as it flies on. */
export const reportedWords = (
  flight: PhoneFlight,
  index: number,
  { planned, reported, softCounts }: Reported,
): ReportedWords | null => {
  const leg = flight.sheet?.legs[index];
  // A drum that rides home is reported for the last leg: it belongs where it was to come out.
  const toComeOut = new Set(
    planned.sheet?.drums.flatMap(({ number, offAfterLeg }) => (offAfterLeg === index ? [number] : [])),
  );
  const here = reported.filter(({ kind, drum, leg: at }) =>
    kind === 'left at' ? at === index + 1 : toComeOut.has(drum),
  );
  if (flight.sheet === null || leg === undefined || here.length === 0) return null;
  const left = here.flatMap(({ drum, kind }) => (kind === 'left at' ? [drum] : []));
  const { onSheet } = drumsOnLeg(flight, index, reported);
  const besides = here.flatMap(({ drum, kind }) =>
    kind === 'left at' || onSheet.includes(drum) ? [] : [drum],
  );
  const aboard = [...onSheet.filter((number) => !left.includes(number)), ...besides];
  const leftLb = flight.sheet.drums.reduce(
    (sum, { number, lb }) => sum + (left.includes(number) ? lb : 0),
    0,
  );
  const lies = placesOfLeft(here);
  const elsewhere = [...lies.keys()].filter((place) => place !== leg.to);
  const leave =
    elsewhere.length > 0
      ? notFigured(elsewhere, leg.to)
      : leaveOf(leg, softCounts, {
          loaded: aboard.length === 0 ? 'empty' : 'loaded',
          weights: (arrivalLb) => [{ by: 'With what is still aboard', lb: arrivalLb - leftLb }],
        });
  const leftWords = [...lies]
    .map(([place, drums]) => `Left ${place === leg.to ? 'here' : `at ${place}`}: ${drums.join(', ')}`)
    .join('. ');
  return { aboard, left, leftWords, back: here.length - left.length, leave };
};

const placesOfLeft = (reported: readonly ReportedDrum[]): ReadonlyMap<string, readonly string[]> => {
  const lies = new Map<string, string[]>();
  for (const { kind, place, drum } of reported)
    if (kind === 'left at') lies.set(place, [...(lies.get(place) ?? []), drum]);
  return lies;
};

/** The sheet has neither the weight on arrival there nor the limit of that strip. */
const notFigured = (places: readonly string[], planned: string): LegWords['leave'] => ({
  over: true,
  main: `Not figured for ${places.join(', ')}`,
  rest: [
    `Weights and limits on this page are of ${planned}, as planned. There: the commander’s approved data.`,
  ],
});
