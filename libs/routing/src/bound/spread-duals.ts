import type { RelaxationBound } from './lower-bound.js';
import type { Relaxation } from './relaxation.js';

/**
 * Duals of the problem with all its days as one, on every day of the whole problem: what a pack and an hour are worth in
 * the horizon, they are worth on each of its days.
 */
export function spreadDuals(relaxation: Relaxation, inAll: RelaxationBound): Float64Array {
  const duals = new Float64Array(relaxation.program.rows.length);
  const spread = (rows: readonly number[] | null | undefined, from: readonly number[] | null | undefined) => {
    for (const row of rows ?? []) duals[row] = from ? inAll.duals[from[0]] : 0;
  };
  relaxation.stores.forEach(({ balance, cuts }, at) => {
    const one = inAll.relaxation.stores[at];
    spread(balance, one.balance);
    cuts.forEach(({ row }, cut) => {
      duals[row] = one.cuts[cut] ? inAll.duals[one.cuts[cut].row] : 0;
    });
  });
  relaxation.supplies.forEach((supply, at) => {
    spread(supply?.packRow, inAll.relaxation.supplies[at]?.packRow);
    spread(supply?.unitRow, inAll.relaxation.supplies[at]?.unitRow);
  });
  relaxation.vehicles.forEach(({ blockRow, dutyRow }, group) => {
    spread(blockRow, inAll.relaxation.vehicles[group].blockRow);
    spread(dutyRow, inAll.relaxation.vehicles[group].dutyRow);
  });
  return duals;
}
