import type { LoadSheet, OwnSheet, ToldSheet } from '@drumline/loading';
import type { Hold } from '@drumline/stock';
import type { IsoInstant } from '@drumline/units';
import type { Board } from '../board/board.service.js';
import { type LoadBody, loadsAboard } from '../reports/loads-aboard.js';
import type { Flight, Load } from '../store/flight.table.js';
import { namedFlight, ofItsDay } from './named-flight.js';
import { sheetFor } from './sheet-for.js';
import { figuresOf } from './two-totals.js';

/** Base's own sheet of a flight with these drums, also of a day that is over. Null: it cannot be made by today's facts. */
export const sheetOf = (board: Board, flight: Flight, loads: readonly Load[]): LoadSheet | null => {
  const then = ofItsDay(board, flight);
  const named = namedFlight(then, flight, loads);
  return named.found ? sheetFor(then, flight, named.load) : null;
};

/** What base's own sheet says beside a loading that is reported: with the drums aboard, by what was known when it was loaded. */
export const ownSheet = (
  board: Board,
  flight: Flight,
  { body, before }: { readonly body: LoadBody; readonly before: readonly Load[] },
): OwnSheet => {
  const then = ofItsDay(knownAt(board, body.happenedAt), flight);
  const loaded: Flight = { ...flight, state: 'loaded' };
  const named = namedFlight(then, loaded, loadsAboard(flight, body, { settled: false, before }));
  const sheet = named.found ? sheetFor(then, loaded, named.load) : null;
  return {
    version: flight.version,
    figures: sheet === null ? null : figuresOf(board, flight, sheet),
    standing:
      named.found || !named.cannotStand ? sheet : { holds: false, faults: [named.why.replace(/\.$/, '')] },
    checkCode: body.checkCode === undefined ? null : (sheetOf(then, flight, before)?.checkCode ?? null),
    toleranceLb: board.scenario.policy.twoTotals?.toleranceLb ?? null,
  };
};

/** A hold that was set later was on no sheet then. */
const knownAt = (board: Board, at: IsoInstant): Board => {
  const { drums, batches } = board.scenario;
  const asThen = <Row extends { readonly held?: Hold }>({ held, ...row }: Row) =>
    held !== undefined && Date.parse(held.at) <= Date.parse(at) ? { ...row, held } : row;
  const scenario = { ...board.scenario, asOf: at, drums: drums.map(asThen), batches: batches.map(asThen) };
  return { ...board, scenario };
};

/** What its crew says of its sheet. */
export const toldSheet = ({ means, version, totals, checkCode, doesNotHold }: LoadBody): ToldSheet => ({
  ...{ means, version, checkCode, doesNotHold },
  loadLb: totals.load.bySheetLb,
  takeOffLb: totals.takeOff.bySheetLb,
});
