import type { FlightReportBody, MovementBody, PhoneFlight } from '@drumline/contract';
import type { SurfaceState } from '@drumline/network';
import type { Kilograms } from '@drumline/units';
import type { Report } from '../../phone/index.js';
import { happened, type Reporter, written } from '../../phone/reporting.js';
import { entry, flightReport } from './make-entry.js';

export interface LoadedTotals {
  readonly loadLb: number;
  readonly byHandLb: number;
  readonly takeoffLb: number;
  readonly byAircraftLb: number;
  readonly signed: { readonly by: string; readonly reason: string; readonly second: string } | null;
  readonly bySoftFigures: boolean;
  /** Both totals of every comparison, the one that counts last. */
  readonly attempts: readonly string[];
}

export const loaded = (reporter: Reporter, flight: PhoneFlight, totals: LoadedTotals): Report =>
  entry(reporter, {
    words: `${flight.id} loaded, version ${flight.version}`,
    flight: flight.id,
    requests: [
      flightReport(reporter, {
        kind: 'load',
        flight: flight.id,
        ...written(reporter, loadedNote(totals)),
        version: flight.version,
        totals: {
          load: { bySheetLb: totals.loadLb, byHandLb: totals.byHandLb },
          takeOff: { bySheetLb: totals.takeoffLb, byAircraftLb: totals.byAircraftLb },
        } as Extract<FlightReportBody, { kind: 'load' }>['totals'],
        drums: flight.stops.flatMap(({ place, drums }) =>
          drums.map((drum) => ({
            movement: reporter.newId(),
            drum,
            to: place,
            ...positionOf(flight, drum),
            ...weightOf(flight, drum),
          })),
        ),
        ...(totals.signed === null ? {} : { signed: totals.signed }),
        bySoftFigures: totals.bySoftFigures,
        ...doesNotHold(flight),
        // It stands so: base keeps it, whatever it has to say about it.
        allTheSame: true,
      }),
    ],
  });

const positionOf = ({ sheet }: PhoneFlight, drum: string): { readonly position?: string } => {
  const position = sheet?.drums.find(({ number }) => number === drum)?.position;
  return position === undefined ? {} : { position };
};

/** What the sheet says against it, which may know weights that base does not. */
const doesNotHold = ({ sheet }: PhoneFlight): { readonly doesNotHold?: string } =>
  sheet === null || sheet.holds ? {} : { doesNotHold: `${sheet.faults.join('. ')}.`.slice(0, 1000) };

/** What base cannot know: the weight of a drum that it has in no book. */
const weightOf = ({ request }: PhoneFlight, drum: string): { readonly grossKg?: Kilograms } => {
  const own = request?.load.drums.find(({ number }) => number === drum);
  return own?.notInBook === 'weight by the crew' ? { grossKg: own.grossKg } : {};
};

/** What was typed before the totals that count; whoever signs has it in the reason. */
const loadedNote = ({ attempts, signed }: LoadedTotals): string | undefined =>
  signed !== null || attempts.length < 2
    ? undefined
    : `Typed before: ${attempts.slice(0, -1).join('; ')}.`.slice(0, 800);

export const tookOff = (reporter: Reporter, { id }: PhoneFlight): Report =>
  entry(reporter, {
    words: `${id} took off`,
    flight: id,
    requests: [flightReport(reporter, { kind: 'take off', flight: id, ...written(reporter) })],
  });

/** Down at the end; where every drum is accounted for on this phone, that is said with it. */
export const landed = (reporter: Reporter, { id, route }: PhoneFlight, everyDrumIsSaid: boolean): Report => {
  const place = route.at(-1)!;
  return entry(reporter, {
    words: `${id} down at ${place}`,
    flight: id,
    requests: [
      flightReport(reporter, { kind: 'land', flight: id, place, ...written(reporter) }),
      ...(everyDrumIsSaid
        ? [flightReport(reporter, { kind: 'report', flight: id, ...written(reporter) })]
        : []),
    ],
  });
};

export const refused = (reporter: Reporter, { id }: PhoneFlight): Report =>
  entry(reporter, {
    words: `${id}: I will not fly this`,
    flight: id,
    requests: [flightReport(reporter, { kind: 'refuse', flight: id, ...written(reporter) })],
  });

export type ProblemWhat = Extract<FlightReportBody, { kind: 'problem' }>['what'];

export const problem = (
  reporter: Reporter,
  { id }: Pick<PhoneFlight, 'id'>,
  { what, words }: { readonly what: ProblemWhat; readonly words: string },
): Report =>
  entry(reporter, {
    words: `${id}: ${what}`,
    flight: id,
    requests: [
      flightReport(reporter, {
        kind: 'problem',
        flight: id,
        ...written(reporter),
        what,
        ...(words.trim() === '' ? {} : { words: words.trim() }),
      }),
    ],
  });

export const surfaceSeen = (
  reporter: Reporter,
  place: string,
  { state, seen }: { readonly state: SurfaceState; readonly seen: 'on the ground' | 'from the air' },
): Report =>
  entry(reporter, {
    words: `Surface at ${place}: ${state}`,
    flight: null,
    requests: [
      {
        path: `/api/surface-reports/${reporter.newId()}`,
        body: {
          place,
          state,
          at: happened(reporter),
          by: seen === 'from the air' ? `${reporter.by}, from the air` : reporter.by,
        },
      },
    ],
  });

const wronglyOff = (id: string): string => `Wrongly reported: ${id} took off. It has not taken off.`;

/** A press on the wrong day: what base has written stays, and base is told. */
export const notOff = (reporter: Reporter, { id }: PhoneFlight): Report =>
  problem(reporter, { id }, { what: 'other', words: wronglyOff(id) });

export const saysNotOff = (body: FlightReportBody | MovementBody, id: string): boolean =>
  body.kind === 'problem' && body.words === wronglyOff(id);

/** What only base can put right: it is told what was said, and what is wrong with it. */
export const toldWrong = (
  reporter: Reporter,
  id: string,
  { said, words }: { readonly said: string; readonly words: string },
): Report =>
  problem(reporter, { id }, { what: 'other', words: `Wrongly reported: ${said}. ${words.trim()}` });
