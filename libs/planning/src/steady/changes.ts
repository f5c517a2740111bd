import type { Problem, Trip } from '@drumline/routing';

/** Trips by index as they would be after a change. */
export type Change = ReadonlyMap<number, Trip>;

/** Changes that begin with one trip: alone elsewhere; with all on its route that day; in exchange with another trip. */
export function changesOf(problem: Problem, trips: readonly Trip[], trip: number): Change[] {
  const one = trips[trip]!;
  const places = placesFor(problem, one);
  const alike = [...trips.keys()].filter((t) => trips[t]!.day === one.day && trips[t]!.route === one.route);
  const alone = places.map((place) => new Map([[trip, { ...one, ...place }]]));
  const together =
    alike.length === 1 || alike[0] !== trip
      ? []
      : places.map((place) => new Map(alike.map((t) => [t, { ...trips[t]!, ...place }])));
  const exchanged = [...trips.keys()]
    .filter((t) => t > trip)
    .flatMap((t) => exchange(problem, [trip, t], [one, trips[t]!]));
  return [...alone, ...together, ...exchanged];
}

/** Where and by whom a trip is flown. */
type Place = Pick<Trip, 'day' | 'vehicle' | 'crew'>;

/** Every day, vehicle and crew that could fly the trip, hours apart. */
function placesFor({ days, vehicles, routes, crews }: Problem, trip: Trip): Place[] {
  const { kind, source, conditionByDay, crewGroup } = routes[trip.route]!;
  const fit = [...vehicles.keys()].filter((v) => vehicles[v]!.kind === kind && vehicles[v]!.home === source);
  const places: Place[] = [];
  for (let day = 0; day < days; day++) {
    if (conditionByDay[day]! < 0) continue;
    const pilots = [...crews.keys()].filter((c) => crews[c]!.groupsByDay[day]!.includes(crewGroup));
    for (const vehicle of fit) {
      if (vehicles[vehicle]!.dutyHours[day] === 0) continue;
      for (const crew of crewGroup < 0 ? [-1] : pilots) places.push({ day, vehicle, crew });
    }
  }
  return places;
}

/** Both trips in each other's place, where either could be flown there. */
function exchange(
  problem: Problem,
  [a, b]: readonly [number, number],
  [one, other]: readonly [Trip, Trip],
): Change[] {
  if (one.route === other.route || !fits(problem, one, other) || !fits(problem, other, one)) return [];
  const placeOf = ({ day, vehicle, crew }: Trip): Place => ({ day, vehicle, crew });
  return [
    new Map([
      [a, { ...one, ...placeOf(other) }],
      [b, { ...other, ...placeOf(one) }],
    ]),
  ];
}

function fits({ vehicles, routes, crews }: Problem, trip: Trip, { day, vehicle, crew }: Place): boolean {
  const { kind, source, conditionByDay, crewGroup } = routes[trip.route]!;
  const { kind: flown, home } = vehicles[vehicle]!;
  const isFlown = conditionByDay[day]! >= 0 && flown === kind && home === source;
  return isFlown && (crewGroup < 0 || (crew >= 0 && crews[crew]!.groupsByDay[day]!.includes(crewGroup)));
}
