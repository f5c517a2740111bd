import type { WeekBooked, WeekFlight, WeekLanding } from '@drumline/contract';
import type { StripLimit } from '@drumline/loading';
import type { Place } from '@drumline/network';
import {
  type BookedFlight,
  drumsLanded,
  isUnheardOf,
  mostPassengers,
  type PlannedFlight,
  routeOfBooked,
} from '@drumline/planning';
import type { IsoDate } from '@drumline/units';
import type { Flight } from '../flights/store/flight.table.js';

/** A flight as its box shows it; `legs`: by the facts of today where they are other than those it was planned by. */
export const weekFlight = (
  flight: Flight,
  today: IsoDate,
  legs: PlannedFlight['legs'] = flight.planned.legs,
): WeekFlight => {
  const { fromPlace, stops, toPlace, changedAt } = flight;
  const laden = legs.filter(({ drumsAboard }) => drumsAboard > 0);
  const tightest = laden.toSorted((one, other) => one.spareLb - other.spareLb)[0];
  return {
    id: flight.id,
    kind: flight.kind,
    state: flight.state,
    version: flight.version,
    revision: flight.revision,
    needsDecision: flight.needsDecision,
    heldInPlace: flight.heldInPlace,
    unheard: isUnheardOf(flight, today),
    date: flight.date,
    departs: flight.departs,
    aircraft: flight.aircraft,
    pilot: flight.pilot,
    route: [fromPlace, ...stops.map(({ place }) => place), toPlace],
    drums: stops.reduce((sum, { drums }) => sum + drums, 0),
    drumsPossible: laden[0]?.drumsPossible ?? 0,
    binding: tightest === undefined ? null : { name: tightest.binding.name, place: tightest.binding.place },
    lastAct: flight.lastAct,
    changedAt: `${changedAt.toISOString().slice(0, 16)}Z`,
    changedByName: flight.changedByName,
  };
};

export const weekBooked = (
  flight: BookedFlight,
  today: Pick<WeekBooked, 'spareDrums' | 'needsDecision'>,
): WeekBooked => ({
  id: flight.id,
  date: flight.date,
  aircraft: flight.aircraft,
  purpose: flight.purpose,
  departs: flight.departs ?? null,
  heldHours: flight.heldHours,
  route: routeOfBooked(flight),
  passengers: mostPassengers(flight),
  ...today,
});

/** By day, and on a day in the order in which the flights come. */
export const landingsOf = (
  flights: readonly Pick<Flight, 'date' | 'stops'>[],
  places: readonly Place[],
): readonly WeekLanding[] => {
  const limits = new Map(places.map((place) => [place.code, place.landingCapacityDrumsPerDay]));
  return drumsLanded(flights).map((landed) => ({ ...landed, limitDrums: limits.get(landed.place) ?? null }));
};

/** The most used first. */
export const referencesOf = (limits: readonly Pick<StripLimit, 'reference'>[]): readonly string[] => {
  const times = new Map<string, number>();
  for (const { reference } of limits) times.set(reference, (times.get(reference) ?? 0) + 1);
  return [...times].sort(([, one], [, other]) => other - one).map(([reference]) => reference);
};
