import { type Pounds, print } from '@drumline/units';
import type { Board } from './board.service.js';
import type { Flight, Load } from './flight.table.js';
import { type LoadBody, loadsAboard } from './look-at-load.js';
import { namedFlight } from './named-flight.js';
import { sheetFor } from './sheet-for.js';
import { compareWithSheet, type SheetAtBase, sheetAtBase } from './two-totals.js';

/**
 * What a crew wrote or said of its sheet beside base's own sheet of that version with the drums that are aboard; empty:
 * they agree, or it came from a phone or a screen, which has the sheet itself. Which is right is not said.
 */
export const unlikeOwnSheet = (
  board: Board,
  flight: Flight,
  { body, before }: { readonly body: LoadBody; readonly before: readonly Load[] },
): readonly string[] => {
  const { twoTotals } = board.scenario.policy;
  const isTold = body.means === 'paper' || body.means === 'radio';
  if (!isTold || twoTotals === undefined || body.version !== flight.version) return [];
  const own = ownSheet(board, flight, loadsAboard(flight, body, { settled: false, before }));
  return own === null ? [] : totalsUnlike(own, body, twoTotals.toleranceLb);
};

/** A day that is over still has its sheet: paper comes in the day after. Null: it cannot be made by today's facts. */
const ownSheet = (board: Board, flight: Flight, loads: readonly Load[]): SheetAtBase | null => {
  const [firstDay] = [flight.date, board.scenario.firstDay].sort();
  const scenario = { ...board.scenario, firstDay: firstDay! };
  const ofItsDay = { ...board, scenario };
  const named = namedFlight(ofItsDay, flight, loads);
  return named.found ? sheetAtBase(ofItsDay, flight, sheetFor(ofItsDay, flight, named.load)) : null;
};

const totalsUnlike = (own: SheetAtBase, { totals, version, means }: LoadBody, toleranceLb: Pounds) => {
  const onSheet = own.sheet.legs[0]?.totals;
  if (onSheet === undefined) return [];
  const pairs = [
    ['load', onSheet.loadLb, totals.load.bySheetLb],
    ['take-off weight', onSheet.takeoffLb, totals.takeOff.bySheetLb],
  ] as const;
  return pairs.flatMap(([of, bySheetLb, typedLb]) => {
    const compared = compareWithSheet(own, { of, leg: 0, bySheetLb, typedLb, toleranceLb });
    if (compared.agrees) return [];
    const slips = compared.slips.map(({ title, words }) => `${title}: ${words}`);
    const told = means === 'radio' ? 'as said by radio' : 'as written on paper';
    const arithmetic = `The ${of} by base's sheet of version ${version}, and ${told}: ${compared.words}; ${print(toleranceLb, 'lb')} is accepted.`;
    return [[arithmetic, ...slips, compared.advice].join(' ')];
  });
};
