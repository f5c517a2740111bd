import type { AlternateStrip, NamedLoad } from '@drumline/loading';
import { dayIndex, type IsoDate } from '@drumline/units';
import { territoryOf } from '../problem/territory.js';
import type { Scenario } from '../scenario.js';

/**
 * By leg: the caches and bases at which the flight could put its drums down instead, with their surface of the day and
 * the drums for which there is room. `standingDrums` says what stands at a place; where it is not given, the scenario's
 * own drums do.
 */
export function alternatesOfFlight(
  scenario: Scenario,
  load: NamedLoad,
  date: IsoDate,
  standingDrums: (place: string) => number = drumsAt(scenario),
): AlternateStrip[][] {
  const territory = territoryOf(scenario);
  const day = dayIndex(scenario.firstDay, date);
  return load.request.legs.map(({ to }) =>
    scenario.caches
      .map(({ place, capacityDrums }) => ({
        place,
        roomDrums: Math.max(0, capacityDrums - standingDrums(place)),
      }))
      .filter(({ place }) => place !== to.place.code && territory.place(place).runway !== null)
      .map(({ place, roomDrums }) => ({
        end: {
          place: territory.place(place),
          surface: territory.surface(place, day),
          limit: territory.limit(place, load.request.type.id),
        },
        distanceNm: territory.distance(to.place.code, place),
        roomDrums,
      })),
  );
}

/** Drums at a place, counted as the capacity counts them: litres over a fill, rounded up. */
function drumsAt({ drums, policy }: Scenario): (place: string) => number {
  return (place) => {
    const there = drums.filter((drum) => drum.place === place).reduce((sum, { litres }) => sum + litres, 0);
    return Math.ceil(there / policy.drum.fillLitres);
  };
}
