import type { SearchState } from './search-state.js';

/**
 * Adds a trip with the drops, on the vehicle of the right kind that it fills best and with a crew; a
 * vehicle whose standing visit it keeps comes first. Returns the slot; -1: no vehicle or no crew has the hours.
 */
export function placeTrip(state: SearchState, route: number, day: number, drops: ArrayLike<number>): number {
  const vehicle = vehicleFor(state, route, day);
  if (vehicle < 0) return -1;
  const crew = crewFor(state, route, day);
  return crew === null ? -1 : state.add(route, vehicle, day, crew, drops);
}

function vehicleFor(state: SearchState, route: number, day: number): number {
  const { flat, hours, standing } = state;
  const condition = flat.conditionAt[route * flat.days + day];
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (const vehicle of flat.vehiclesOf[flat.start[route]]) {
    if (!hours.fits(vehicle, day, flat.blockHours[condition], flat.dutyHours[condition])) continue;
    const kept = standing.dropped > 0 && standing.wants(route, vehicle, day);
    const left = kept ? -1 : hours.freeDuty[vehicle * flat.days + day];
    if (left < least) {
      least = left;
      best = vehicle;
    }
  }
  return best;
}

/** A crew with the hours, after re-matching the day's crews if need be; -1: nobody is needed; null: none. */
function crewFor(state: SearchState, route: number, day: number): number | null {
  const { flat, crews } = state;
  const group = flat.crewGroup[route];
  if (group < 0) return -1;
  const condition = flat.conditionAt[route * flat.days + day];
  const duty = { day, group, blockHours: flat.blockHours[condition], dutyHours: flat.dutyHours[condition] };
  const free = crews.find(duty);
  if (free >= 0) return free;

  const slots = state.slotsOn[day].filter((slot) => state.crew[slot] >= 0);
  if (slots.length === 0) return null;
  for (const slot of slots) crews.work(state.crew[slot], state.dutyOf(slot), -1);
  const matched = crews.match([duty, ...slots.map((slot) => state.dutyOf(slot))]);
  for (const slot of slots) crews.work(state.crew[slot], state.dutyOf(slot), 1);
  if (!matched) return null;
  slots.forEach((slot, i) => {
    if (state.crew[slot] !== matched[i + 1]) state.setCrew(slot, matched[i + 1]);
  });
  return matched[0];
}
