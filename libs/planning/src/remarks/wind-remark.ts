import { type IsoDate, type Knots, knots, print } from '@drumline/units';
import type { DescribedFlights } from '../flights/describe-flights.js';
import { groupBy } from '../group-by.js';
import { countWords, listWords, runWords } from '../wording.js';

/** Still air, or the legs that are flown with a planned wind, with their days. */
export function windRemark({ flights }: DescribedFlights): string {
  const flown = flights.flatMap(({ date, legs }) => legs.map((leg) => ({ ...leg, date })));
  const winds = flown.flatMap(({ windKt, ...leg }) => (windKt === null ? [] : [{ ...leg, windKt }]));
  if (winds.length === 0) return 'Still air on every leg.';
  const told = [...groupBy(winds, ({ from, to, windKt }) => `${from}-${to} ${windKt}`).values()].map(
    (legs) => {
      const [{ from, to, windKt }] = legs as [(typeof legs)[0]];
      return `${from}-${to} (${windWords(windKt)}, ${runWords(daysOf(legs))})`;
    },
  );
  const still = flown.length - winds.length;
  const others = still === 0 ? '' : `; still air on ${countWords(still, 'other leg')}`;
  return `Wind is given on ${listWords(told)}${others}.`;
}

function windWords(windKt: Knots): string {
  if (windKt === 0) return 'calm';
  return `${print(knots(Math.abs(windKt)), 'kt')} ${windKt < 0 ? 'headwind' : 'tailwind'}`;
}

const daysOf = (legs: readonly { readonly date: IsoDate }[]): readonly IsoDate[] => [
  ...new Set(legs.map(({ date }) => date)),
];
