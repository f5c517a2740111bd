import { baseSupply } from '@drumline/stock';
import { daysFrom, litres } from '@drumline/units';
import type { BaseUse } from '../flight-plan.js';
import type { Scenario } from '../scenario.js';
import type { FlightSketch } from './flight-sketch.js';

/**
 * Drums and own fuel (L) taken from each base; `drumsReady` can have been ready by the last day, and `leftLitres` is the
 * bulk and filled drums left at the end, resupplies and drums landed at the base counted in.
 */
export function baseUse(scenario: Scenario, sketches: readonly FlightSketch[]): readonly BaseUse[] {
  const dates = daysFrom(scenario.firstDay, scenario.days);
  const fill = scenario.policy.drum.fillLitres;
  return scenario.bases.map((base) => {
    const supply = baseSupply(base, scenario.drums, scenario.batches, dates, fill);
    const leaving = sketches.filter(({ flight }) => flight.from === base.place);
    const drumsTaken = sum(leaving.map(({ drums }) => drums));
    const ownFuel = sum(leaving.map(({ onDay }) => onDay.ownFuelLitres));
    const landed = sum(
      sketches.flatMap(({ flight }) =>
        flight.stops.filter(({ place }) => place === base.place).map(({ drums }) => drums),
      ),
    );
    return {
      place: base.place,
      drumsTaken,
      drumsReady: supply.drumsByDay.at(-1)!,
      ownFuelLitres: litres(ownFuel),
      leftLitres: litres(supply.litresByDay.at(-1)! + (landed - drumsTaken) * fill - ownFuel),
      note: base.note ?? null,
    };
  });
}

const sum = (figures: readonly number[]): number => figures.reduce((total, figure) => total + figure, 0);
