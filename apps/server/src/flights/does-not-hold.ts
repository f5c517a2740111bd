import type { Fault as FieldFault } from '@drumline/contract';
import type { Board } from './board.service.js';
import type { Flight, Load } from './flight.table.js';
import { type LoadBody, loadsAboard } from './loads-aboard.js';
import { ownSheet } from './told-totals.js';

/**
 * A load that keeps not every limit: as its crew says of its own sheet, which may know weights that base does not; else by
 * base's sheet with the drums that are aboard where they stand, by what was known when it was loaded.
 */
export const doesNotHold = (
  board: Board,
  flight: Flight,
  { body, before }: { readonly body: LoadBody; readonly before: readonly Load[] },
): readonly FieldFault[] => {
  if (body.doesNotHold !== undefined) return [fault('by the sheet it was loaded by', body.doesNotHold)];
  if (body.version !== flight.version) return [];
  const scenario = { ...board.scenario, asOf: body.happenedAt };
  const aboard = loadsAboard(flight, body, { settled: false, before });
  const sheet = ownSheet({ ...board, scenario }, { ...flight, state: 'loaded' }, aboard);
  return sheet === null || sheet.holds ? [] : [fault("by base's sheet", `${sheet.faults.join('. ')}.`)];
};

const fault = (by: string, words: string): FieldFault => ({
  path: 'drums',
  problem: `the load does not hold ${by}: ${words}`,
  remedy: 'Put the drums elsewhere, or take others or fewer; then report it again.',
});
