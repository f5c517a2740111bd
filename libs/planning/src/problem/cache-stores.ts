import type { Store } from '@drumline/routing';
import { type Cache, expiryLosses, openingStock } from '@drumline/stock';
import type { IsoDate } from '@drumline/units';
import type { Scenario, StandingFlight, StandingStop } from '../scenario.js';
import { usableDrums } from './standing-flights.js';
import { stockOutlook } from './stock-outlook.js';

/** A store whose end target and prices are still to be set. */
export type UnpricedStore = Omit<Store, 'prices' | 'endTarget' | 'cushion'>;

/** The caches as stores that receive drums, in the scenario's order; levels in litres. */
export function cacheStores(scenario: Scenario, frozen: readonly StandingFlight[]): readonly UnpricedStore[] {
  const outlook = stockOutlook(scenario);
  const { dates, fillLitres } = outlook;
  const places = scenario.caches.map(({ place }) => place);
  const stocks = openingStock(places, outlook.picture, dates[0]!);
  const expiry = expiryLosses(outlook);
  const sum = summing(dates, places);
  const demand = sum(outlook.draws);
  const slungOut = sum(scenario.slings.map(({ date, from, drums }) => by(date, from, drums * fillLitres)));
  const slungIn = sum(scenario.slings.map(({ date, to, drums }) => by(date, to, drums * fillLitres)));
  const landedDrums = sum(landingsOf(frozen, ({ drums }) => drums));
  const landedUsable = sum(landingsOf(frozen, (stop) => usableDrums(stop) * fillLitres));

  return scenario.caches.map((cache, i) => {
    const { bookLitres, usableLitres } = stocks.get(cache.place)!;
    const expired = expiry[i]!.litresByDay;
    const landed = landedDrums[i]!;
    const usable = landedUsable[i]!;
    const held = landed.map((drums, day) => drums * fillLitres - usable[day]!);
    return {
      id: cache.place,
      opening: usableLitres,
      capacity: capacityByDay(cache.capacityDrums * fillLitres, bookLitres - usableLitres, { expired, held }),
      arrivals: slungIn[i]!.map((amount, day) => amount + usable[day]!),
      losses: slungOut[i]!.map((amount, day) => amount + expired[day]!),
      demand: demand[i]!,
      floor: cache.medevacReserveLitres,
      minimum: cache.minimumLitres,
      critical: cache.criticalLitres,
      packsPerDay: drumsPerDay(scenario, cache, dates, landed),
      supply: null,
    };
  });
}

/** What frozen flights set down, by date and place. */
function landingsOf(
  frozen: readonly StandingFlight[],
  amountOf: (stop: StandingStop) => number,
): readonly Amount[] {
  return frozen.flatMap(({ date, stops }) => stops.map((stop) => by(date, stop.place, amountOf(stop))));
}

/**
 * Room for usable litres after the day's landings: fuel that is held, past retest or not found by the count stands in
 * drums that take their room. What passes its retest date on a day is still usable when that day's drums land; what
 * lands on hold takes room from the day on.
 */
function capacityByDay(
  capacity: number,
  unusable: number,
  { expired, held }: { readonly expired: readonly number[]; readonly held: readonly number[] },
): number[] {
  let takenUp = unusable;
  return expired.map((amount, day) => {
    takenUp += held[day]!;
    const room = capacity - takenUp;
    takenUp += amount;
    return Math.max(0, room);
  });
}

/** Drums that may still be set down by day: the hands at the place less frozen landings; none after the permit. */
function drumsPerDay(
  scenario: Scenario,
  { place, permitUntil }: Cache,
  dates: readonly IsoDate[],
  landed: readonly number[],
): readonly number[] | null {
  const most = scenario.places.find(({ code }) => code === place)!.landingCapacityDrumsPerDay;
  if (most === null && permitUntil === undefined) return null;
  return dates.map((date, day) =>
    permitUntil !== undefined && date > permitUntil
      ? 0
      : Math.max(0, (most ?? unlimitedDrums) - landed[day]!),
  );
}

/** More than any fleet lands in a day, where only the permit limits. */
const unlimitedDrums = 1000;

interface Amount {
  readonly date: IsoDate;
  readonly place: string;
  readonly litres: number;
}

const by = (date: IsoDate, place: string, litres: number): Amount => ({ date, place, litres });

/** Totals by place and day of the horizon; other dates and places are left out. */
function summing(dates: readonly IsoDate[], places: readonly string[]) {
  const dayOf = new Map(dates.map((date, day) => [date, day]));
  const rowOf = new Map(places.map((place, row) => [place, row]));
  return (amounts: readonly Amount[]): readonly number[][] => {
    const totals = places.map(() => dates.map(() => 0));
    for (const { date, place, litres } of amounts) {
      const day = dayOf.get(date);
      const row = rowOf.get(place);
      if (day !== undefined && row !== undefined) totals[row]![day]! += litres;
    }
    return totals;
  };
}
