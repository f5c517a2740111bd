/** A flight that wants a departure time on one day; times are whole minutes after local midnight. */
export interface DayFlight {
  readonly id: string;
  readonly aircraft: string;
  readonly pilot: string | null;
  /** Departure no earlier than this and no later than `latest`; a flight with a given time has both alike. */
  readonly earliest: number;
  readonly latest: number;
  /** Minutes that aircraft and pilot are taken, the turn-round at the end included. */
  readonly heldMinutes: number;
  /** The smaller, the earlier it should fly. */
  readonly urgency: number;
}

export type DaySchedule =
  | { readonly status: 'scheduled'; readonly departures: ReadonlyMap<string, number> }
  | { readonly status: 'no schedule'; readonly flights: readonly string[]; readonly why: string };

/** Orders tried for one group of flights before giving up; the first ones are the likely ones. */
const searchLimit = 20_000;

/**
 * Departure times of one day: one aircraft flies one flight at a time, one pilot flies one aircraft at a time, each
 * flight departs within its window. The most urgent flight is placed first, as early as its aircraft and pilot allow;
 * where that leaves a flight without a place, other orders are searched (exact for small groups, bounded for large).
 * "No schedule" names the flights that share aircraft and pilots and do not fit together.
 */
export function scheduleDay(flights: readonly DayFlight[]): DaySchedule {
  const departures = new Map<string, number>();
  for (const group of sharingGroups(flights)) {
    const placed = placeGroup(group);
    if (!placed) return noSchedule(group);
    for (const { flight, start } of placed) departures.set(flight.id, start);
  }
  return { status: 'scheduled', departures };
}

interface Placed {
  readonly flight: DayFlight;
  readonly start: number;
}

function placeGroup(group: readonly DayFlight[]): readonly Placed[] | null {
  const given = group.filter((flight) => flight.earliest === flight.latest);
  const free = group.filter((flight) => flight.earliest !== flight.latest);
  const fixed = placeInOrder([], given);
  if (!fixed) return null;
  const byUrgency = free.toSorted(
    (one, other) => one.urgency - other.urgency || one.earliest - other.earliest,
  );
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

function noSchedule(group: readonly DayFlight[]): DaySchedule {
  const alone = group.find((flight) => flight.earliest > flight.latest);
  if (alone) {
    return {
      status: 'no schedule',
      flights: [alone.id],
      why: `${alone.id} does not fit between the first departure and the last landing`,
    };
  }
  const resources = new Set(
    group.flatMap((flight) => [flight.aircraft, ...(flight.pilot ? [flight.pilot] : [])]),
  );
  return {
    status: 'no schedule',
    flights: group.map((flight) => flight.id),
    why: `no order was found in which ${[...resources].join(', ')} can fly ${group.map((flight) => flight.id).join(', ')} one at a time within the flying day`,
  };
}
