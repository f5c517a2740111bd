import type { IsoDate } from '@drumline/units';
import type { StandingFlight } from '../scenario.js';

/** Drums that flights set down at a place on a day: what is held against the drums that can be unloaded there in a day. */
export interface DrumsLanded {
  readonly date: IsoDate;
  readonly place: string;
  readonly drums: number;
}

/** Of every day and place at which these flights set drums down, in the order in which the flights come. */
export function drumsLanded(
  flights: readonly Pick<StandingFlight, 'date' | 'stops'>[],
): readonly DrumsLanded[] {
  const landed = new Map<string, DrumsLanded>();
  for (const { date, stops } of flights)
    for (const { place, drums } of stops) {
      const key = `${date} ${place}`;
      const all = (landed.get(key)?.drums ?? 0) + drums;
      if (all > 0) landed.set(key, { date, place, drums: all });
    }
  return [...landed.values()];
}
