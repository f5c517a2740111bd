import type { LoadSheet, OwnSheet, ToldSheet } from '@drumline/loading';
import type { Board } from './board.service.js';
import type { Flight, Load } from './flight.table.js';
import { type LoadBody, loadsAboard } from './loads-aboard.js';
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
  const then = ofItsDay({ ...board, scenario: { ...board.scenario, asOf: body.happenedAt } }, flight);
  const loaded: Flight = { ...flight, state: 'loaded' };
  const named = namedFlight(then, loaded, loadsAboard(flight, body, { settled: false, before }));
  const sheet = named.found ? sheetFor(then, loaded, named.load) : null;
  return {
    version: flight.version,
    figures: sheet === null ? null : figuresOf(board, flight, sheet),
    standing:
      named.found || !named.cannotStand ? sheet : { holds: false, faults: [named.why.replace(/\.$/, '')] },
    checkCode: body.checkCode === undefined ? null : (sheetOf(board, flight, before)?.checkCode ?? null),
    toleranceLb: board.scenario.policy.twoTotals?.toleranceLb ?? null,
  };
};

/** What its crew says of its sheet. */
export const toldSheet = ({ means, version, totals, checkCode, doesNotHold }: LoadBody): ToldSheet => ({
  ...{ means, version, checkCode, doesNotHold },
  loadLb: totals.load.bySheetLb,
  takeOffLb: totals.takeOff.bySheetLb,
});
