/** A flight that wants a departure time on one day; times are whole minutes after local midnight. */
export interface DayFlight {
  readonly id: string;
  readonly aircraft: string;
  readonly pilot: string | null;
  /** Departure no earlier than this and no later than `latest`; a flight with a given time has both alike. */
  readonly earliest: number;
  readonly latest: number;
  /** The departure that people know already, kept where it can be. */
  readonly before?: number;
  /** Minutes that aircraft and pilot are taken, the turn-round at the end included. */
  readonly heldMinutes: number;
  /** The smaller, the earlier it should fly. */
  readonly urgency: number;
}

/** Departures in minutes after local midnight, and what does not fit: those flights are left without a departure. */
export interface DaySchedule {
  readonly departures: ReadonlyMap<string, number>;
  readonly clashes: readonly ScheduleClash[];
}

/** Flights that do not fit: one alone, or several that share aircraft and pilots. */
export interface ScheduleClash {
  readonly flights: readonly string[];
  readonly why: string;
}

/** Orders tried for one group of flights before giving up; the first ones are the likely ones. */
const searchLimit = 20_000;

/**
 * Departure times of one day: one aircraft flies one flight at a time, one pilot flies one aircraft at a time, each
 * flight departs within its window; given times stand, and so do times that people know already where all still find a
 * place with them. The most urgent flight is placed first, as early as its aircraft
 * and pilot allow; where that leaves a flight without a place, other orders are searched (exact for small groups,
 * bounded for large). A clash names the flights that share aircraft and pilots and do not fit together.
 */
export function scheduleDay(flights: readonly DayFlight[]): DaySchedule {
  const departures = new Map<string, number>();
  const clashes: ScheduleClash[] = [];
  const hopeless = flights.filter((flight) => flight.earliest > flight.latest);
  for (const { id } of hopeless)
    clashes.push({
      flights: [id],
      why: `${id} does not fit between the first departure and the last landing`,
    });
  for (const group of sharingGroups(flights.filter((flight) => !hopeless.includes(flight)))) {
    const given = group.filter((flight) => flight.earliest === flight.latest).map(atItsTime);
    clashes.push(...givenTogether(given));
    const placed = placeFree(withTimesBefore(given, group), group) ?? placeFree(given, group);
    if (!placed) clashes.push(noOrder(group));
    for (const { flight, start } of placed ?? given) departures.set(flight.id, start);
  }
  return { departures, clashes };
}

interface Placed {
  readonly flight: DayFlight;
  readonly start: number;
}

const atItsTime = (flight: DayFlight): Placed => ({ flight, start: flight.earliest });

/** Given times that put an aircraft or a pilot in two places: they stand all the same. */
function givenTogether(given: readonly Placed[]): readonly ScheduleClash[] {
  return given.flatMap((one, index) =>
    given
      .slice(index + 1)
      .filter((other) => shares(one.flight, other.flight) && overlap(one, other))
      .map((other) => ({
        flights: [one.flight.id, other.flight.id],
        why: `${one.flight.id} and ${other.flight.id} are given times at which one is not back for the other`,
      })),
  );
}

const overlap = (one: Placed, other: Placed): boolean =>
  one.start < other.start + other.flight.heldMinutes && other.start < one.start + one.flight.heldMinutes;

/** The flights placed so far, then each at its time before that is within its window and free. */
function withTimesBefore(given: readonly Placed[], group: readonly DayFlight[]): readonly Placed[] {
  const placed = [...given];
  for (const flight of group.toSorted((one, other) => one.urgency - other.urgency)) {
    const { before, earliest, latest } = flight;
    if (before === undefined || earliest === latest || before < earliest || before > latest) continue;
    const kept = { flight, start: before };
    if (placed.every((other) => !shares(other.flight, flight) || !overlap(kept, other))) placed.push(kept);
  }
  return placed;
}

function placeFree(fixed: readonly Placed[], group: readonly DayFlight[]): readonly Placed[] | null {
  const settled = new Set(fixed.map(({ flight }) => flight));
  const byUrgency = group
    .filter((flight) => !settled.has(flight))
    .sort((one, other) => one.urgency - other.urgency || one.earliest - other.earliest);
  const byDeadline = byUrgency.toSorted((one, other) => one.latest - other.latest);
  return placeInOrder(fixed, byUrgency) ?? placeInOrder(fixed, byDeadline) ?? searchOrders(fixed, byUrgency);
}

function placeInOrder(before: readonly Placed[], order: readonly DayFlight[]): readonly Placed[] | null {
  const placed = [...before];
  for (const flight of order) {
    const start = earliestStart(placed, flight);
    if (start > flight.latest) return null;
    placed.push({ flight, start });
  }
  return placed;
}

/**
 * Every order in which flights can be put down at their earliest gap gives every schedule worth having. A flight that
 * has no place left ends the branch, since putting down more only takes room away.
 */
function searchOrders(fixed: readonly Placed[], free: readonly DayFlight[]): readonly Placed[] | null {
  let looked = 0;
  const search = (placed: readonly Placed[], left: readonly DayFlight[]): readonly Placed[] | null => {
    if (left.length === 0) return placed;
    if (++looked > searchLimit) return null;
    const starts = left.map((flight) => earliestStart(placed, flight));
    if (left.some((flight, index) => starts[index]! > flight.latest)) return null;
    for (const [index, flight] of left.entries()) {
      const found = search([...placed, { flight, start: starts[index]! }], left.toSpliced(index, 1));
      if (found) return found;
    }
    return null;
  };
  return search(fixed, free);
}

/** The first minute from which aircraft and pilot are both free long enough. */
function earliestStart(placed: readonly Placed[], flight: DayFlight): number {
  const taken = placed
    .filter((other) => shares(other.flight, flight))
    .sort((one, other) => one.start - other.start);
  let start = flight.earliest;
  for (const other of taken) {
    if (start + flight.heldMinutes <= other.start) break;
    start = Math.max(start, other.start + other.flight.heldMinutes);
  }
  return start;
}

const shares = (one: DayFlight, other: DayFlight): boolean =>
  one.aircraft === other.aircraft || (one.pilot !== null && one.pilot === other.pilot);

/** Flights that share an aircraft or a pilot, directly or through others, are scheduled together. */
function sharingGroups(flights: readonly DayFlight[]): readonly (readonly DayFlight[])[] {
  let groups: DayFlight[][] = [];
  for (const flight of flights) {
    const touching = groups.filter((group) => group.some((other) => shares(other, flight)));
    groups = [...groups.filter((group) => !touching.includes(group)), [...touching.flat(), flight]];
  }
  return groups;
}

function noOrder(group: readonly DayFlight[]): ScheduleClash {
  const flights = group.map(({ id }) => id);
  const resources = new Set(
    group.flatMap(({ aircraft, pilot }) => (pilot === null ? [aircraft] : [aircraft, pilot])),
  );
  const why = `no order was found in which ${[...resources].join(', ')} can fly ${flights.join(', ')} one at a time within the flying day`;
  return { flights, why };
}
