import { cents, printMoney } from '@drumline/units';
import type { BlockingLimit, BuiltProblem } from '../problem/problem-map.js';
import { dayWords } from '../wording.js';
import type { Shortfall } from './find-shortages.js';
import { noFlightWords } from './no-flight-words.js';

const limitWords: Readonly<Record<BlockingLimit, string>> = {
  closed: 'closures, no-flying days or soft strips',
  'landing capacity': 'the drums that the strip can unload in a day',
  capacity: 'the capacity of the site',
  'aircraft hours': 'the aircraft at hand',
  crew: 'the pilots at hand',
  'base stock': 'the drums ready at the bases',
};

/**
 * What stands in the way of a shortage, in words that follow "Blocked by:". `by`: the limits each of which, lifted
 * alone, would spare it; null: nobody asked.
 */
export function blockedWords(
  built: BuiltProblem,
  shortfall: Shortfall,
  by: readonly BlockingLimit[] | null,
): string {
  const { day, level, place } = shortfall;
  const store = built.map.storeOf.get(place)!;
  const isFlown = built.problem.routes.some(({ stops }) => stops.includes(store));
  if (day === 0 || !isFlown || by?.length === 0) {
    const noFlight = isStrip(built, place) ? noFlightWords(built.scenario, place) : null;
    if (noFlight !== null) return noFlight;
  }
  if (day === 0) return 'nothing that a plan decides: it is short before the first day.';
  if (!isFlown) return slingWords(built, shortfall);
  if (level === 'short of the end target') return worthWords(built, store);
  if (by === null) return 'not looked for, the time was up.';
  if (by.length === 0)
    return 'no single limit that was found: whichever one is lifted, the others still keep it short.';
  const limits = by.map((limit) => limitWords[limit]).join('; ');
  return by.length === 1 ? `${limits}.` : `any one of these, lifting it alone would do: ${limits}.`;
}

const isStrip = ({ scenario }: BuiltProblem, place: string): boolean =>
  scenario.places.some(({ code, kind }) => code === place && kind === 'strip');

function slingWords({ scenario }: BuiltProblem, { place, date }: Shortfall): string {
  const next = scenario.slings
    .filter((sling) => sling.to === place && sling.date > date)
    .map((sling) => sling.date)
    .sort()[0];
  const comes =
    next === undefined ? 'none is planned after it' : `the next one is planned for ${dayWords(next)}`;
  return `the slings, no aeroplane brings drums there: ${comes}.`;
}

function worthWords({ scenario, problem }: BuiltProblem, store: number): string {
  const worth = printMoney(cents(problem.stores[store]!.prices.belowEndTarget), scenario.currency);
  return `money: no flight was found that brings these litres for less than their worth, ${worth} a litre.`;
}
