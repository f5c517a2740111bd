import { type LegRequest, type RouteRequest, routeLoad } from '@drumline/loading';
import { kilograms, kilogramsFromPounds, type Litres, volumeOf } from '@drumline/units';
import { withApproval } from '../load-sheet/approvals.js';
import type { BookedFlight, BookedLeg, Scenario } from '../scenario.js';
import type { FlightOnDay, LoadOf } from './problem-map.js';
import type { Territory } from './territory.js';

/** What flights may carry, by the loading rules, under the surfaces and winds of a day. */
export interface FlightLoads {
  readonly loadOf: LoadOf;
  readonly bookedLoad: (flight: BookedFlight, type: string, day: number) => FlightOnDay;
  /** By day. Equal keys mean equal loads: surfaces and winds along the way; null: closed that day. */
  readonly conditionsKeys: (places: readonly string[]) => readonly (string | null)[];
}

/** The loading rules of a scenario. A positioning flight is worked out once for equal surfaces and winds. */
export function flightLoads(scenario: Scenario, territory: Territory): FlightLoads {
  const known = new Map<string, FlightOnDay>();
  const booked = new Map<BookedFlight, FlightOnDay>();
  const conditionsOf = conditionsText(territory);
  const closedOn = closedWhy(scenario, territory);
  const rowOf = legRows(territory, conditionsOf, closedOn);
  return {
    loadOf: (type, places, day) => {
      const closed = closedOn(places, day);
      const key = `${type} ${places.join()} ${conditionsOf(places, day)} ${closed}`;
      const onDay = known.get(key) ?? positioning(scenario, territory, type, places, day, closed);
      known.set(key, onDay);
      return onDay;
    },
    bookedLoad: (flight, type, day) => {
      const found = booked.get(flight);
      if (found) return found;
      const planned = requestOf(scenario, territory, type, flight.configuration, flight.legs, day);
      const request = withApproval(planned, scenario, flight);
      const places = [flight.legs[0]!.from, ...flight.legs.map(({ to }) => to)];
      const onDay = onDayOf(scenario, request, closedOn(places, day));
      booked.set(flight, onDay);
      return onDay;
    },
    conditionsKeys: (places) => {
      const rows = places.map((place, i) => rowOf(places[i - 1] ?? place, place));
      return territory.dates.map((_, day) =>
        rows.reduce<string | null>((key, row) => keyWith(key, row[day]!), ''),
      );
    },
  };
}

function conditionsText(territory: Territory) {
  return (places: readonly string[], day: number): string => {
    let text = territory.surface(places[0]!, day) as string;
    for (let i = 1; i < places.length; i++) {
      const { windKt } = territory.leg(places[i - 1]!, places[i]!, day);
      text += ` ${territory.surface(places[i]!, day)}${windKt ?? ''}`;
    }
    return text;
  };
}

/** The part of the key that a leg gives, by day; null: closed. Worked out once a leg: a pool asks for the same ones again and again. */
function legRows(
  territory: Territory,
  conditionsOf: ReturnType<typeof conditionsText>,
  closedOn: ReturnType<typeof closedWhy>,
) {
  const known = new Map<string, readonly (string | null)[]>();
  return (from: string, to: string): readonly (string | null)[] => {
    const key = `${from} ${to}`;
    const leg = [from, to];
    const row =
      known.get(key) ??
      territory.dates.map((_, day) => (closedOn(leg, day) === null ? conditionsOf(leg, day) : null));
    known.set(key, row);
    return row;
  };
}

const keyWith = (key: string | null, part: string | null): string | null =>
  key === null || part === null ? null : `${key}${part} `;

function closedWhy(scenario: Scenario, territory: Territory) {
  const noFlying = new Set(scenario.noFlyingDays);
  return (places: readonly string[], day: number): string | null => {
    const date = territory.dates[day]!;
    if (noFlying.has(date)) return `${date} is a no-flying day`;
    for (let i = 1; i < places.length; i++) {
      const { closed } = territory.leg(places[i - 1]!, places[i]!, day);
      if (closed !== null) return closed;
    }
    return null;
  };
}

function positioning(
  scenario: Scenario,
  territory: Territory,
  type: string,
  places: readonly string[],
  day: number,
  closed: string | null,
): FlightOnDay {
  const legs = places.slice(1).map((to, i) => ({ ...emptyLeg, from: places[i]!, to }));
  const configuration = territory.type(type).drumConfiguration;
  return onDayOf(scenario, requestOf(scenario, territory, type, configuration, legs, day), closed);
}

const emptyLeg = { passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(0) };

function requestOf(
  scenario: Scenario,
  territory: Territory,
  type: string,
  configuration: string,
  legs: readonly BookedLeg[],
  day: number,
): RouteRequest {
  const end = (code: string) => ({
    place: territory.place(code),
    surface: territory.surface(code, day),
    limit: territory.limit(code, type),
  });
  const leg = ({ from, to, passengers, passengersKg, freightKg }: BookedLeg): LegRequest => ({
    from: end(from),
    to: end(to),
    distanceNm: territory.distance(from, to),
    windKt: territory.leg(from, to, day).windKt,
    passengers,
    passengersKg,
    freightKg,
    upliftOnArrival: false,
  });
  const { fuel, passengers, drum } = scenario.policy;
  return {
    type: territory.type(type),
    configuration,
    legs: legs.map(leg),
    fuelPolicy: fuel,
    passengerRule: passengers,
    drum,
  };
}

function onDayOf(scenario: Scenario, request: RouteRequest, closed: string | null): FlightOnDay {
  const load = routeLoad(request);
  return {
    request,
    load,
    ownFuelLitres: ownFuel(scenario, load.burnLb),
    closed: closed ?? (load.flyable ? null : load.why),
  };
}

/** Litres burned, at the book density (conventions, "Whose stock own fuel draws"). */
function ownFuel({ policy }: Scenario, burnLb: FlightOnDay['load']['burnLb']): Litres {
  return volumeOf(kilogramsFromPounds(burnLb), policy.bookDensityKgPerLitre);
}
