import type { Problem } from '../problem.js';
import { type Fault, figure, GRACE } from './fault.js';
import type { Round } from './round.js';

/** Stock units at a store through the days, worked out for the check alone. */
export interface StockDay {
  readonly deliveredPacks: number;
  readonly afterDeliveries: number;
  readonly unmet: number;
  readonly closing: number;
}

/** The days of one store under the rounds of a plan. */
export function stockDays(problem: Problem, store: number, rounds: readonly Round[]): StockDay[] {
  const { opening, arrivals, losses, demand, floor } = problem.stores[store];
  let stock = opening;
  return Array.from({ length: problem.days }, (_, day) => {
    let deliveredPacks = 0;
    for (const round of rounds) {
      if (round.day === day) deliveredPacks += round.drops[round.stops.indexOf(store)] ?? 0;
    }
    const afterDeliveries = stock + arrivals[day] + deliveredPacks * problem.packSize;
    stock = afterDeliveries - losses[day];
    let unmet = 0;
    if (stock < 0) {
      unmet = -stock;
      stock = 0;
    }
    const canDraw = stock > floor ? stock - floor : 0;
    if (canDraw >= demand[day]) stock -= demand[day];
    else {
      stock -= canDraw;
      unmet += demand[day] - canDraw;
    }
    return { deliveredPacks, afterDeliveries, unmet, closing: stock };
  });
}

/** Deliveries that do not fit, or are more than the place can take off in a day. */
export function deliveryFaults(problem: Problem, store: number, days: readonly StockDay[]): Fault[] {
  const { id, capacity, packsPerDay } = problem.stores[store];
  return days.flatMap(({ deliveredPacks, afterDeliveries }, day) => {
    if (deliveredPacks === 0) return [];
    const where = `store ${id}, day ${day}`;
    const faults: Fault[] = [];
    const room = capacity?.[day] ?? Number.POSITIVE_INFINITY;
    if (afterDeliveries > room + GRACE) {
      const what = `${figure(afterDeliveries)} stock units after deliveries, room for ${figure(room)}`;
      const packs = Math.ceil((afterDeliveries - room) / problem.packSize - GRACE);
      faults.push({ where, what, mend: `deliver ${packs} packs less, or later` });
    }
    const most = packsPerDay?.[day] ?? Number.POSITIVE_INFINITY;
    if (deliveredPacks > most) {
      const what = `${deliveredPacks} packs set down, at most ${most} a day`;
      faults.push({ where, what, mend: `move ${deliveredPacks - most} packs to another day` });
    }
    return faults;
  });
}

/** Days by the end of which more has been taken at a source than there was. */
export function supplyFaults(problem: Problem, source: number, rounds: readonly Round[]): Fault[] {
  const { id, supply } = problem.stores[source];
  const from = rounds.filter((round) => round.source === source);
  if (!supply) {
    const mend = 'start from a source';
    return from.filter(packsOf).map(({ where }) => ({ where, what: `store ${id} supplies nothing`, mend }));
  }
  const faults: Fault[] = [];
  for (let day = 0; day < problem.days; day++) {
    const where = `source ${id}, day ${day}`;
    const until = from.filter((round) => round.day <= day);
    const packs = until.reduce((total, round) => total + packsOf(round), 0);
    const units = until.reduce((total, round) => total + packsOf(round) * problem.packSize + round.ownUse, 0);
    const ready = Math.max(0, supply.packsByDay[day]);
    const stock = Math.max(0, supply.unitsByDay?.[day] ?? Number.POSITIVE_INFINITY);
    if (packs > ready + GRACE)
      faults.push({
        where,
        what: `${packs} packs taken, ${figure(ready)} ready`,
        mend: `take ${figure(packs - ready)} fewer by then`,
      });
    if (units > stock + GRACE) {
      const what = `${figure(units)} stock units taken with own use, ${figure(stock)} there`;
      faults.push({ where, what, mend: `take ${figure(units - stock)} fewer by then` });
    }
  }
  return faults;
}

export const packsOf = (round: Round): number => round.drops.reduce((total, drop) => total + drop, 0);
