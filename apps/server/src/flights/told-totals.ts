import { type LoadSheet, unlikeOwnCode, unlikeOwnTotals } from '@drumline/loading';
import type { Board } from './board.service.js';
import type { Flight, Load } from './flight.table.js';
import { type LoadBody, loadsAboard } from './loads-aboard.js';
import { namedFlight, ofItsDay } from './named-flight.js';
import { sheetFor } from './sheet-for.js';
import { figuresOf } from './two-totals.js';

/**
 * What a crew wrote or said of its sheet beside base's own sheet of that version: totals with the drums that are aboard,
 * check code with those that were set aside. Empty: they agree, or it came from a phone or a screen, which has the sheet itself.
 */
export const unlikeOwnSheet = (
  board: Board,
  flight: Flight,
  { body, before }: { readonly body: LoadBody; readonly before: readonly Load[] },
): readonly string[] => {
  const { means, version } = body;
  if ((means !== 'paper' && means !== 'radio') || version !== flight.version) return [];
  return [
    ...totalsUnlike(board, flight, { body, means, before }),
    ...codeUnlike(board, flight, { body, before }),
  ];
};

interface Told {
  readonly body: LoadBody;
  readonly before: readonly Load[];
}

const totalsUnlike = (
  board: Board,
  flight: Flight,
  { body, means, before }: Told & { readonly means: 'paper' | 'radio' },
): readonly string[] => {
  const { twoTotals } = board.scenario.policy;
  const aboard = loadsAboard(flight, body, { settled: false, before });
  const own = ownSheet(board, { ...flight, state: 'loaded' }, aboard);
  const figures = own === null ? null : figuresOf(board, flight, own);
  if (twoTotals === undefined || figures === null) return [];
  const { load, takeOff } = body.totals;
  const told = { means, version: body.version, loadLb: load.bySheetLb, takeOffLb: takeOff.bySheetLb };
  return unlikeOwnTotals(figures, told, twoTotals.toleranceLb);
};

const codeUnlike = (board: Board, flight: Flight, { body, before }: Told): readonly string[] => {
  const own = body.checkCode === undefined ? null : ownSheet(board, flight, before);
  const words = own === null ? null : unlikeOwnCode(own.checkCode, body.checkCode!, body.version);
  return words === null ? [] : [words];
};

/** Also of a day that is over. Null: it cannot be made by today's facts. */
export const ownSheet = (board: Board, flight: Flight, loads: readonly Load[]): LoadSheet | null => {
  const then = ofItsDay(board, flight);
  const named = namedFlight(then, flight, loads);
  return named.found ? sheetFor(then, flight, named.load) : null;
};
