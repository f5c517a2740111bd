import { daysFrom, epochMinutes, type IsoDate } from '@drumline/units';
import type { Scenario } from '../scenario.js';
import type { SurveyedFlight } from './survey.js';

/** What a cache holds after the landings of each day and at its end; entry 0 is the first day. Litres. */
export interface LedgerDay {
  readonly afterLandings: number;
  readonly usable: number;
}

interface Lot {
  litres: number;
  sealed: boolean;
  readonly retestDue: IsoDate;
  readonly held: boolean;
  readonly number: string;
}

/**
 * The checker's own book of every cache, drum by drum (conventions, "Order of a day", "Usable stock"): landings, slings
 * in and out, draws down to the reserve, level. What cannot be drawn is taken off the level all the same.
 */
export function cacheLedger(
  scenario: Scenario,
  flights: readonly SurveyedFlight[],
): ReadonlyMap<string, readonly LedgerDay[]> {
  const lots = openingLots(scenario);
  const unfound = new Map(
    scenario.caches.map((cache) => [cache.place, takeUnfound(scenario, cache.place, lots)]),
  );
  const unmet = new Map<string, number>();
  const days = new Map<string, LedgerDay[]>(scenario.caches.map((cache) => [cache.place, []]));
  for (const [index, date] of daysFrom(scenario.firstDay, scenario.days).entries()) {
    landAll(scenario, flights, index + 1, lots);
    const slungOut = slingAll(scenario, date, { lots, unmet });
    for (const { place, medevacReserveLitres } of scenario.caches) {
      const here = lots.get(place) ?? [];
      const standing = total(here) + unfound.get(place)! + (slungOut.get(place) ?? 0);
      const fit = here.filter((lot) => isFit(lot, date)).sort(inOrderOfUse);
      const asked = drawsOn(scenario, place, date);
      const drawn = Math.min(asked, Math.max(0, total(fit) - medevacReserveLitres));
      use(fit, drawn);
      unmet.set(place, (unmet.get(place) ?? 0) + asked - drawn);
      days.get(place)!.push({ afterLandings: standing, usable: total(fit) - unmet.get(place)! });
      lots.set(
        place,
        here.filter((lot) => lot.litres > 0),
      );
    }
  }
  return days;
}

function openingLots(scenario: Scenario): Map<string, Lot[]> {
  const batches = new Map(scenario.batches.map((batch) => [batch.id, batch]));
  const lots = new Map<string, Lot[]>();
  for (const drum of scenario.drums) {
    if (drum.content !== 'filled sealed' && drum.content !== 'part used') continue;
    const batch = batches.get(drum.batch)!;
    const lot = {
      litres: drum.litres,
      sealed: drum.content === 'filled sealed',
      retestDue: batch.retestDue,
      held: Boolean(drum.held ?? batch.held),
      number: drum.number,
    };
    lots.set(drum.place, [...(lots.get(drum.place) ?? []), lot]);
  }
  return lots;
}

/** Litres of the book that the last count did not find, taken from the fit drums used last. */
function takeUnfound(scenario: Scenario, place: string, lots: ReadonlyMap<string, Lot[]>): number {
  const here = lots.get(place) ?? [];
  const asOf = epochMinutes(scenario.asOf);
  const counts = scenario.counts
    .filter((count) => count.place === place && epochMinutes(count.at) <= asOf)
    .sort((one, other) => epochMinutes(one.at) - epochMinutes(other.at));
  const count = counts.at(-1);
  if (!count) return 0;
  const { percentOfBook, litresPerOpenDrum } = scenario.policy.countTolerance;
  const short = total(here) - count.litres;
  if (short <= Math.max((percentOfBook / 100) * total(here), litresPerOpenDrum * count.openDrums)) return 0;
  const fit = here.filter((lot) => isFit(lot, scenario.firstDay)).sort(inOrderOfUse);
  const before = total(fit);
  use(fit.toReversed(), short);
  return before - total(fit);
}

function landAll(
  scenario: Scenario,
  flights: readonly SurveyedFlight[],
  day: number,
  lots: Map<string, Lot[]>,
): void {
  for (const { flight } of flights.filter((flown) => flown.day === day)) {
    for (const { place, drums, heldDrums = 0 } of flight.stops) {
      const landed = Array.from({ length: drums }, (_, index) => ({
        ...freshDrum(scenario, `${flight.id} ${index}`),
        held: index < heldDrums,
      }));
      lots.set(place, [...(lots.get(place) ?? []), ...landed]);
    }
  }
}

const freshDrum = (scenario: Scenario, number: string): Lot => ({
  litres: scenario.policy.drum.fillLitres,
  sealed: true,
  retestDue: '9999-12-31',
  held: false,
  number,
});

interface Standing {
  readonly lots: Map<string, Lot[]>;
  readonly unmet: ReadonlyMap<string, number>;
}

/** Moves drums under helicopters; returns the litres that left each place, which stood there after the landings. */
function slingAll(scenario: Scenario, date: IsoDate, { lots, unmet }: Standing): ReadonlyMap<string, number> {
  const kept = new Set(scenario.caches.map((cache) => cache.place));
  const out = new Map<string, number>();
  for (const sling of scenario.slings.filter((move) => move.date === date)) {
    const there = lots.get(sling.from) ?? [];
    const moved = kept.has(sling.from)
      ? liftable(there, date, unmet.get(sling.from) ?? 0).slice(0, sling.drums)
      : Array.from({ length: sling.drums }, (_, index) => freshDrum(scenario, `${date} ${index}`));
    out.set(sling.from, (out.get(sling.from) ?? 0) + total(moved));
    lots.set(
      sling.from,
      there.filter((lot) => !moved.includes(lot)),
    );
    lots.set(sling.to, [...(lots.get(sling.to) ?? []), ...moved]);
  }
  return out;
}

/** Sealed fit lots in the order they go; what draws have been short of so far is not there for a sling. */
function liftable(here: readonly Lot[], date: IsoDate, owed: number): readonly Lot[] {
  const fit = here.filter((lot) => isFit(lot, date));
  const free = total(fit) - owed;
  const sealed = fit.filter((lot) => lot.sealed).sort(inOrderOfUse);
  const tooMany = sealed.findIndex((_, index) => total(sealed.slice(0, index + 1)) > free);
  return tooMany === -1 ? sealed : sealed.slice(0, tooMany);
}

function drawsOn(scenario: Scenario, place: string, date: IsoDate): number {
  const draws = [...scenario.helicopterTasks, ...scenario.plannedUplifts];
  return total(draws.filter((draw) => draw.place === place && draw.date === date));
}

const isFit = (lot: Lot, date: IsoDate): boolean => !lot.held && date <= lot.retestDue;

const inOrderOfUse = (one: Lot, other: Lot): number =>
  Number(one.sealed) - Number(other.sealed) ||
  one.retestDue.localeCompare(other.retestDue) ||
  one.number.localeCompare(other.number, 'en', { numeric: true });

function use(order: readonly Lot[], wanted: number): void {
  let left = wanted;
  for (const lot of order) {
    const used = Math.min(left, lot.litres);
    lot.litres -= used;
    left -= used;
    if (used > 0) lot.sealed = false;
  }
}

const total = (items: readonly { readonly litres: number }[]): number =>
  items.reduce((sum, item) => sum + item.litres, 0);
