import { baseSupply } from '@drumline/stock';
import { dayIndex, daysFrom, litres } from '@drumline/units';
import type { BaseUse } from '../flight-plan.js';
import { typeOf } from '../problem/fixed-flights.js';
import type { FlightLoads } from '../problem/flight-loads.js';
import { isWithin } from '../problem/standing-flights.js';
import type { Scenario } from '../scenario.js';
import type { FlightSketch } from './flight-sketch.js';

/**
 * Drums and own fuel (L) taken from each base; `drumsReady` can have been ready by the last day, and `leftLitres` is the
 * bulk and filled drums left at the end, resupplies and drums landed at the base counted in. A booked flight burns its own
 * fuel whether or not it is among the flights with drums.
 */
export function baseUse(
  scenario: Scenario,
  loads: FlightLoads,
  sketches: readonly FlightSketch[],
): readonly BaseUse[] {
  const alone = bookedAlone(scenario, loads, sketches);
  const dates = daysFrom(scenario.firstDay, scenario.days);
  const fill = scenario.policy.drum.fillLitres;
  return scenario.bases.map((base) => {
    const supply = baseSupply(base, scenario.drums, scenario.batches, dates, fill);
    const leaving = sketches.filter(({ flight }) => flight.from === base.place);
    const drumsTaken = sum(leaving.map(({ drums }) => drums));
    const ownFuel = sum([
      ...leaving.map(({ onDay }) => onDay.ownFuelLitres),
      ...alone.filter(({ from }) => from === base.place).map(({ ownFuelLitres }) => ownFuelLitres),
    ]);
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

/** Booked flights of the days of the plan that carry no drums. */
function bookedAlone(scenario: Scenario, loads: FlightLoads, sketches: readonly FlightSketch[]) {
  const carrying = new Set(sketches.map(({ flight }) => flight.id));
  return scenario.bookedFlights
    .filter(({ id, date }) => isWithin(scenario, date) && !carrying.has(id))
    .map((booked) => {
      const day = dayIndex(scenario.firstDay, booked.date);
      const { ownFuelLitres } = loads.bookedLoad(booked, typeOf(scenario, booked.aircraft), day);
      return { from: booked.legs[0]!.from, ownFuelLitres };
    });
}

const sum = (figures: readonly number[]): number => figures.reduce((total, figure) => total + figure, 0);
