import { type Cents, cents, hours, type Litres, litres } from '@drumline/units';
import type { MoneyParts, PlannedFlight, PlanTotals } from '../flight-plan.js';
import { groupBy } from '../group-by.js';

/**
 * Totals of a plan. Flights and block hours (h) count positioning flights only, since booked ones fly anyway;
 * drums, litres and money count both.
 */
export function planTotals(flights: readonly PlannedFlight[]): PlanTotals {
  const positioning = flights.filter((flight) => flight.kind === 'positioning');
  const drumsByBase = groupBy(flights, (flight) => flight.from);
  return {
    flights: positioning.length,
    drums: sum(flights.map((flight) => flight.drums)),
    litres: litres(sum(flights.map((flight) => flight.litres))),
    blockHours: hours(sum(positioning.map((flight) => flight.blockHours))),
    cost: sumMoney(flights.map((flight) => flight.cost)),
    drumsFromBase: [...drumsByBase]
      .map(([place, taken]) => ({ place, drums: sum(taken.map((flight) => flight.drums)) }))
      .sort((one, other) => (one.place < other.place ? -1 : 1)),
  };
}

/** Money of several flights, each part added up to the cent. */
export function sumMoney(parts: readonly MoneyParts[]): MoneyParts {
  return moneyParts(
    cents(sum(parts.map((part) => part.flight))),
    cents(sum(parts.map((part) => part.fuel))),
    cents(sum(parts.map((part) => part.handling))),
    litres(sum(parts.map((part) => part.litres))),
  );
}

/** The three parts of a cost with their total and the cost per litre landed (null where nothing is landed). */
export function moneyParts(flight: Cents, fuel: Cents, handling: Cents, landed: Litres): MoneyParts {
  const total = cents(flight + fuel + handling);
  return { flight, fuel, handling, total, litres: landed, perLitre: landed > 0 ? total / landed : null };
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
