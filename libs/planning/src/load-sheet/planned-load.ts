import {
  type BarBlock,
  type NamedLoad,
  type PayloadBar,
  payloadBars,
  printedLbOf,
  type SurfacesHeard,
} from '@drumline/loading';
import { type Kilograms, kilograms, pounds } from '@drumline/units';
import { isWithin } from '../problem/standing-flights.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import { countWords } from '../wording.js';
import { type LoadOfFlight, loadOfFlight } from './load-of-flight.js';

/**
 * The load of a flight before its drums are picked: as many as are planned, each at the planning weight, named "drum 1",
 * "drum 2" in the order of the stops, in positions that hold.
 */
export function plannedLoadOfFlight(scenario: Scenario, flight: StandingFlight): LoadOfFlight {
  if (!isWithin(scenario, flight.date))
    return { found: false, why: `${flight.date} is outside the days of the plan` };
  const { grossKg, tareKg, fillLitres } = scenario.policy.drum;
  const places = flight.stops.flatMap(({ place, drums }) => Array.from({ length: drums }, () => place));
  const picked = places.map((place, at) => ({ number: `drum ${at + 1}`, place, position: null }));
  const drums = picked.map(({ number }) => ({
    ...{ number, grossKg, tareKg },
    batch: 'not picked',
    place: flight.from,
    content: 'filled sealed' as const,
    litres: fillLitres,
  }));
  return loadOfFlight({ ...scenario, drums }, flight, picked);
}

/**
 * The payload bars of a planned load, its drums in one block and its passengers in another. The drums are rounded to whole
 * pounds together and not one by one, so that every spare is that of the plan (conventions, "Printed sums").
 */
export function plannedBars(load: NamedLoad, heard: SurfacesHeard = {}): PayloadBar[] {
  return payloadBars(load, heard).map((bar) =>
    passengersInOneBlock(inOneBlock(bar, load.request.drum.grossKg)),
  );
}

function passengersInOneBlock(bar: PayloadBar): PayloadBar {
  const people = bar.load.filter(isPassenger);
  if (people.length === 0) return bar;
  const block = {
    name: countWords(people.length, 'passenger'),
    kg: kilograms(people.reduce((sum, { kg }) => sum + kg, 0)),
    lb: pounds(people.reduce((sum, { lb }) => sum + lb, 0)),
    isDrum: false,
  };
  const drums = bar.load.filter(({ isDrum }) => isDrum);
  const freight = bar.load.filter((one) => !one.isDrum && !isPassenger(one));
  return { ...bar, load: [...drums, block, ...freight] };
}

/** As the load of a flight names them. */
const isPassenger = ({ name, isDrum }: BarBlock): boolean => !isDrum && name.startsWith('passenger');

function inOneBlock(bar: PayloadBar, grossKg: Kilograms): PayloadBar {
  if (bar.drums === 0) return bar;
  const kg = kilograms(bar.drums * grossKg);
  const block = { name: countWords(bar.drums, 'drum'), kg, lb: printedLbOf(kg), isDrum: true };
  const oneByOneLb = bar.load.reduce((sum, { isDrum, lb }) => sum + (isDrum ? lb : 0), 0);
  return {
    ...bar,
    load: [block, ...bar.load.filter(({ isDrum }) => !isDrum)],
    limits: bar.limits.map((limit) => ({
      ...limit,
      spareLb: pounds(limit.spareLb + oneByOneLb - block.lb),
    })),
  };
}
