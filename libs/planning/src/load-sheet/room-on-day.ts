import type { NamedLoad, SheetFlight } from '@drumline/loading';
import type { Cache } from '@drumline/stock';
import { drumsLanded } from '../flights/drums-landed.js';
import { territoryOf } from '../problem/territory.js';
import type { Scenario, StandingState } from '../scenario.js';

/** Not down there yet: its drums will still want their room. */
const isToCome: ReadonlySet<StandingState> = new Set(['offered', 'approved', 'given', 'loaded', 'away']);

/**
 * Drums that may still be put down at a cache on the day of a flight: what its site holds beside what stands there, and
 * what can be unloaded there in a day, each less what the other flights of that day bring. The flight's own drums take none here.
 */
export function roomOnDay(
  scenario: Scenario,
  flight: SheetFlight,
  load: NamedLoad,
): (cache: Cache) => number {
  const { place } = territoryOf(scenario);
  const own = new Set(load.drums.map(({ number }) => number));
  const others = scenario.flights.filter(({ id, date }) => date === flight.date && id !== flight.id);
  const brought = (flights: Scenario['flights']) =>
    new Map(drumsLanded(flights).map((landed) => [landed.place, landed.drums]));
  const byAll = brought(others);
  const toCome = brought(others.filter(({ state }) => isToCome.has(state)));
  return ({ place: code, capacityDrums }) => {
    const onSite = capacityDrums - standingAt(scenario, code, own) - (toCome.get(code) ?? 0);
    const perDay = place(code).landingCapacityDrumsPerDay ?? Number.POSITIVE_INFINITY;
    return Math.max(0, Math.min(onSite, perDay - (byAll.get(code) ?? 0)));
  };
}

/** Drums at a place, counted as the capacity counts them: litres over a fill, rounded up. */
function standingAt({ drums, policy }: Scenario, code: string, own: ReadonlySet<string>): number {
  const there = drums.filter(({ place, number }) => place === code && !own.has(number));
  const litres = there.reduce((sum, drum) => sum + drum.litres, 0);
  return Math.ceil(litres / policy.drum.fillLitres);
}
