import { type IsoDate, type Litres, litres } from '@drumline/units';
import { drawDown, fitLitres, setDown, takeSealed, withoutMissing } from './cache-stock.js';
import type { Cache } from './drum.js';
import type { OpeningStock } from './opening-stock.js';
import type { AgedOutDrum } from './projection.js';
import { fitOn, litresIn, type StandingDrum } from './standing-drum.js';

/** One cache on its way through the days of a projection; `days` grows by one entry a day. */
export interface Site {
  readonly cache: Cache;
  /** What stands there and was found by the count, in order of use. */
  drums: readonly StandingDrum[];
  /** Litres of the book that the count did not find. */
  readonly missing: number;
  unmetSoFar: number;
  readonly days: SiteDay[];
  readonly agedOut: AgedOutDrum[];
}

/** Levels and flows of one day in litres; drums where the name says so. */
export interface SiteDay {
  book: number;
  usable: number;
  standing: number;
  landed: number;
  slungIn: number;
  slungOut: number;
  slingShortDrums: number;
  pastRetest: number;
  drawn: number;
  unmet: number;
}

/** The site at the opening: day 0, nothing moves. */
export function openSite(cache: Cache, stock: OpeningStock, day: IsoDate): Site {
  const drums = withoutMissing(stock.drums, stock.countShortfallLitres, day);
  const opening = quietDay(stock.bookLitres);
  opening.book = stock.bookLitres;
  opening.usable = stock.usableLitres;
  return {
    cache,
    drums,
    missing: stock.bookLitres - litresIn(drums),
    unmetSoFar: 0,
    days: [opening],
    agedOut: [],
  };
}

export function startDay(site: Site): void {
  site.days.push(quietDay(litresIn(site.drums) + site.missing));
}

/** Sets drums down, landed by an aeroplane or brought under a sling. */
export function putDown(site: Site, drums: readonly StandingDrum[], how: 'landed' | 'slungIn'): void {
  const amount = litresIn(drums);
  const today = site.days.at(-1)!;
  site.drums = setDown(site.drums, drums);
  today[how] += amount;
  today.standing += amount;
}

/**
 * Takes sealed drums that are fit on the day, at most what the level has: litres that earlier draws asked for beyond the
 * drawable are off the level, so that no sling carries them to another place, though they may stand there as the reserve.
 */
export function slingOut(site: Site, wanted: number, day: IsoDate): readonly StandingDrum[] {
  const level = fitLitres(site.drums, day) - site.unmetSoFar;
  const { left, taken } = takeSealed(site.drums, { drums: wanted, litres: level }, day);
  const today = site.days.at(-1)!;
  site.drums = left;
  today.slungOut += litresIn(taken);
  today.slingShortDrums += wanted - taken.length;
  return taken;
}

/** Drums that were fit on the day before and are past their retest date now leave usable; they stay on the site. */
export function ageOut(site: Site, day: IsoDate, dayBefore: IsoDate, dueDay: number): void {
  const aged = site.drums.filter((drum) => fitOn(drum, dayBefore) && !fitOn(drum, day));
  site.days.at(-1)!.pastRetest = litresIn(aged);
  for (const { number, litres, retestDue } of aged)
    site.agedOut.push({ place: site.cache.place, number, litres, retestDue: retestDue!, dueDay });
}

/** Draws what is asked for down to the reserve, and closes the levels of the day. */
export function drawAndClose(site: Site, asked: Litres, day: IsoDate): void {
  const today = site.days.at(-1)!;
  const drawable = Math.max(0, fitLitres(site.drums, day) - site.cache.medevacReserveLitres);
  const drawn = Math.min(asked, drawable);
  site.drums = drawDown(site.drums, drawn, day).left;
  site.unmetSoFar += asked - drawn;
  today.drawn = asked;
  today.unmet = asked - drawn;
  today.usable = fitLitres(site.drums, day) - site.unmetSoFar;
  today.book = litresIn(site.drums) + site.missing - site.unmetSoFar;
}

/** Full drums, and one with the rest where the litres are no whole number of them. */
export function fullDrums(
  amount: Litres,
  fill: Litres,
  { retestDue, name }: { readonly retestDue: IsoDate | null; readonly name: string },
): readonly StandingDrum[] {
  return Array.from({ length: Math.ceil(amount / fill) }, (_, index) => ({
    number: `${name} ${index + 1}`,
    litres: litres(Math.min(fill, amount - index * fill)),
    sealed: true,
    retestDue,
    held: false,
  }));
}

function quietDay(standing: number): SiteDay {
  return {
    book: 0,
    usable: 0,
    standing,
    landed: 0,
    slungIn: 0,
    slungOut: 0,
    slingShortDrums: 0,
    pastRetest: 0,
    drawn: 0,
    unmet: 0,
  };
}
