import { pick, type Random } from '../random.js';
import type { OpenState } from './open-state.js';
import type { Rebuild } from './rebuild.js';

/**
 * Closes a route of the trial (its day keeps one route less until `mostRoutes` is reset), opens one, or both; the sites
 * around come back as they fit best.
 */
export function shakeRoutes(rebuild: Rebuild, random: Random, near: readonly (readonly number[])[]): void {
  const { trial, mostRoutes } = rebuild;
  const { sites, vehicles } = trial.flat;
  const kind = random();
  const moved = new Set<number>();
  const closed = kind < 0.75 ? pickDay(trial, random, (routes) => routes > 0) : -1;
  const opened =
    kind > 0.4 ? pickDay(trial, random, (routes, day) => routes < vehicles && day !== closed) : -1;
  if (closed >= 0) {
    const slots = usedSlots(trial, closed);
    mostRoutes[closed] = slots.length - 1;
    const slot = slots[pick(random, slots.length)];
    for (const site of trial.stops.subarray(slot * sites, slot * sites + trial.stopCount[slot]))
      moved.add(site);
  }
  if (opened >= 0) {
    const around = near[pick(random, sites)];
    for (const site of around.slice(0, 2 + pick(random, Math.ceil(sites / 2)))) moved.add(site);
  }
  rebuild.bringBack([...moved], 0, opened);
}

/** Any day whose number of routes is as asked; -1: none is. */
function pickDay(trial: OpenState, random: Random, suits: (routes: number, day: number) => boolean): number {
  const days = Array.from({ length: trial.flat.days }, (_, day) => day).filter((day) =>
    suits(usedSlots(trial, day).length, day),
  );
  return days.length === 0 ? -1 : days[pick(random, days.length)];
}

function usedSlots({ flat: { vehicles }, stopCount }: OpenState, day: number): number[] {
  return Array.from({ length: vehicles }, (_, at) => day * vehicles + at).filter(
    (slot) => stopCount[slot] > 0,
  );
}
