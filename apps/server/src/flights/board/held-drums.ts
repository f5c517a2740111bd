import type { StandingStop } from '@drumline/planning';
import type { Load, Stop } from '../store/flight.table.js';
import type { Flown } from './flown.js';

/** What a flight sets down in the end, with how many of the drums are on hold: they count in no level. */
export const stopsLanded = (
  stops: readonly Stop[],
  { loads, flown }: { readonly loads: readonly Load[]; readonly flown: Flown | undefined },
  held: ReadonlySet<string>,
): readonly StandingStop[] => {
  const landed = flown?.stops ?? stops;
  const drums = flown?.drums ?? loads;
  const left = new Map<string, number>();
  for (const { drum, place } of drums)
    if (drum !== null && held.has(drum)) left.set(place, (left.get(place) ?? 0) + 1);
  return landed.map((stop) => {
    const heldDrums = Math.min(stop.drums, left.get(stop.place) ?? 0);
    left.set(stop.place, (left.get(stop.place) ?? 0) - heldDrums);
    return heldDrums === 0 ? stop : { ...stop, heldDrums };
  });
};
