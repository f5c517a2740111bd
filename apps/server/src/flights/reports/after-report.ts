import type { FlightReportBody } from '@drumline/contract';
import { type Kept, type Moved, replanFreedom } from '@drumline/planning';
import type { Flight, Load } from '../store/flight.table.js';
import type { FlightReport } from '../store/flight-report.table.js';
import { loadsAboard } from './loads-aboard.js';

interface AfterReport {
  readonly flight: Flight;
  readonly loads: readonly Load[];
  /** False: the report says nothing that the flight does not show already. */
  readonly changed: boolean;
  /** It is off, and what its crew has put into it was never entered as loaded: with that it flies. */
  readonly leavesWithKeptLoad: boolean;
}

interface Report {
  readonly body: FlightReportBody;
  readonly answer: Moved | Kept;
  /** No report of this kind came in before. */
  readonly isFirst: boolean;
  /** Null: none, or the flight is past its loading. */
  readonly keptLoad: FlightReport | null;
}

/** The flight as a report leaves it. Of two reports of one thing the first stands. */
export const afterReport = (
  before: Flight,
  loads: readonly Load[],
  { body, answer, isFirst, keptLoad }: Report,
): AfterReport => {
  const moved = answer.kind === 'moved' ? answer.flight : before;
  const { state, version, needsDecision } = moved;
  const flight = { ...before, state, version, needsDecision, ...timesAfter(before, body) };
  const settled = hasLeft(flight);
  const leavesWithKeptLoad = settled && keptLoad !== null;
  const isLoading = body.kind === 'load' && (answer.kind === 'moved' || (isFirst && settled));
  const loading = leavesWithKeptLoad ? keptLoad.data : isLoading ? body : null;
  const aboard = loading?.kind === 'load' ? loadsAboard(flight, loading, { settled, before: loads }) : null;
  return {
    flight,
    loads: aboard ?? loads.map((load) => ({ ...load, settled: load.settled || settled })),
    changed:
      answer.kind === 'moved' ||
      aboard !== null ||
      flight.offAt !== before.offAt ||
      flight.landedAt !== before.landedAt,
    leavesWithKeptLoad,
  };
};

/** Its loading is behind it. */
export const isPastLoading = (state: Flight['state']): boolean =>
  !['idea', 'offered', 'approved', 'given'].includes(state);

/** Where its drums are, the ledger knows from then on. */
const hasLeft = ({ state }: Flight): boolean =>
  state !== 'loaded' && replanFreedom(state) === 'never' && state !== 'declined' && state !== 'called off';

const timesAfter = (
  { offAt, landedAt }: Flight,
  { kind, happenedAt }: FlightReportBody,
): Pick<Flight, 'offAt' | 'landedAt'> => {
  const at = new Date(happenedAt);
  if (kind === 'take off') return { offAt: offAt ?? at, landedAt };
  if (kind === 'land' || kind === 'turn back' || kind === 'end elsewhere')
    return { offAt, landedAt: landedAt ?? at };
  return { offAt, landedAt };
};
