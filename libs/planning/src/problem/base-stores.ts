import type { Supply } from '@drumline/routing';
import { type BaseStock, baseSupply } from '@drumline/stock';
import { dayIndex, daysFrom } from '@drumline/units';
import type { Scenario } from '../scenario.js';
import type { UnpricedStore } from './cache-stores.js';
import type { FixedFlights } from './fixed-flights.js';
import { drumsOf } from './standing-flights.js';
import { plannedDraws } from './stock-outlook.js';

/** The bases as stores that load drums: nothing there runs short, and what leaves is limited by the supply. */
export function baseStores(scenario: Scenario, fixed: FixedFlights): readonly UnpricedStore[] {
  const nothing = new Array<number>(scenario.days).fill(0);
  return scenario.bases.map((base) => ({
    id: base.place,
    opening: 0,
    capacity: null,
    arrivals: nothing,
    losses: nothing,
    demand: nothing,
    floor: 0,
    minimum: 0,
    critical: 0,
    packsPerDay: null,
    supply: supplyOf(scenario, base, usesOf(scenario, base.place, fixed)),
  }));
}

/** What is taken from a base whatever the plan decides. */
interface Use {
  readonly day: number;
  readonly drums: number;
  readonly litres: number;
}

/** Drums and own fuel of frozen flights, own fuel of booked flights, and draws at the base itself. */
function usesOf(scenario: Scenario, base: string, { frozen, booked }: FixedFlights): readonly Use[] {
  const fill = scenario.policy.drum.fillLitres;
  const loaded = frozen
    .filter(({ flight }) => flight.from === base)
    .map(({ flight, day, onDay }) => {
      const drums = drumsOf(flight);
      return { day, drums, litres: drums * fill + onDay.ownFuelLitres };
    });
  const flown = booked.flatMap((entry) =>
    entry.kind === 'booked' && entry.flight.legs[0]!.from === base
      ? [{ day: dayOf(scenario, entry.flight.date), drums: 0, litres: entry.onDay.ownFuelLitres }]
      : [],
  );
  const drawn = plannedDraws(scenario)
    .filter(({ place }) => place === base)
    .map(({ date, litres }) => ({ day: dayOf(scenario, date), drums: 0, litres }));
  return [...loaded, ...flown, ...drawn];
}

const dayOf = (scenario: Scenario, date: string): number => dayIndex(scenario.firstDay, date);

function supplyOf(scenario: Scenario, base: BaseStock, uses: readonly Use[]): Supply {
  const { fillLitres, handlingCost } = scenario.policy.drum;
  const days = [...Array(scenario.days).keys()];
  const supply = baseSupply(
    base,
    scenario.drums,
    scenario.batches,
    daysFrom(scenario.firstDay, scenario.days),
    fillLitres,
  );
  const takenTo = (day: number, amount: (use: Use) => number): number =>
    uses.reduce((sum, use) => (use.day <= day ? sum + amount(use) : sum), 0);
  return {
    packCost: Math.round(fillLitres * planningPrice(base) + handlingCost),
    packsByDay: days.map((day) => supply.drumsByDay[day]! - takenTo(day, (use) => use.drums)),
    unitsByDay: days.map((day) => supply.litresByDay[day]! - takenTo(day, (use) => use.litres)),
  };
}

/** What a litre of the base is worth to the planner: the scarcity price where the operator has set one; cents. */
export function planningPrice({ pricePerLitre, scarcityPricePerLitre }: BaseStock): number {
  return scarcityPricePerLitre ?? pricePerLitre;
}
