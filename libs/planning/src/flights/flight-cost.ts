import { type Cents, cents, litres } from '@drumline/units';
import { moneyParts } from '../differences/plan-totals.js';
import type { MoneyParts } from '../flight-plan.js';
import type { Scenario } from '../scenario.js';
import type { FlightSketch } from './flight-sketch.js';

/**
 * What a flight costs in three parts, each to the nearest cent: block hours and landing fees (none of a booked flight,
 * which flies anyway), the fuel landed at the price of the base it comes from, and the handling of its drums.
 */
export function flightCost(
  { policy, bases }: Scenario,
  { flight, booked, onDay, drums }: FlightSketch,
): MoneyParts {
  const landed = drums * policy.drum.fillLitres;
  const price = bases.find(({ place }) => place === flight.from)?.pricePerLitre ?? 0;
  return moneyParts(
    booked ? cents(0) : onDay.load.cost,
    toTheCent(landed * price),
    toTheCent(drums * policy.drum.handlingCost),
    litres(landed),
  );
}

const toTheCent = (amount: number): Cents => cents(Math.round(amount));
