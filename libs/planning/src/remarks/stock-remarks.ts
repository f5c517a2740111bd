import { type Drum, type OpeningStock, openingStock } from '@drumline/stock';
import type { DescribedFlights } from '../flights/describe-flights.js';
import { groupBy } from '../group-by.js';
import { stockOutlook } from '../problem/stock-outlook.js';
import type { Scenario } from '../scenario.js';
import { dayWords, drumWords, litreWords, stillToComeWords } from '../wording.js';

/** Drums that are not usable and why, drums that pass their retest date unburnt, counts beside the book. */
export function stockRemarks(scenario: Scenario, { caches }: DescribedFlights): readonly string[] {
  const { picture } = stockOutlook(scenario);
  const places = scenario.caches.map(({ place }) => place);
  const counts = [...openingStock(places, picture, scenario.firstDay).values()];
  const aged = caches.flatMap(({ agedOut }) => [...groupBy(agedOut, ({ retestDue }) => retestDue).values()]);
  return [
    ...unusableRemarks(scenario),
    ...aged.map((drums) => {
      const { place, retestDue } = drums[0]!;
      return `${place}: ${drumWords(drums.length)} with ${litreWords(litresOf(drums))} left, last day of use ${dayWords(retestDue)} (retest date).`;
    }),
    ...counts.flatMap((stock) => [...stock.remarks, ...notUsedRemarks(stock, scenario)]),
  ];
}

/** Beside a count that is used, one that is still to come is told as another; without one, the place is not counted yet. */
function notUsedRemarks(
  { countsNotUsed, lastCount }: OpeningStock,
  { asOf, timeZone }: Scenario,
): readonly string[] {
  const one = lastCount === null ? 'not counted yet; a count' : 'another count';
  return countsNotUsed.map(
    ({ place, litres, at }) =>
      `${place}: ${one} of ${litreWords(litres)} is ${stillToComeWords(at, asOf, timeZone)}.`,
  );
}

/** "Not usable at QUER: 24 drums of batch Q27-30, 4,800 L, held: water found in two samples." */
function unusableRemarks({ drums, batches, firstDay }: Scenario): readonly string[] {
  const batchOf = new Map(batches.map((batch) => [batch.id, batch]));
  const whyNot = ({ held, batch }: Drum): string | null => {
    const of = batchOf.get(batch)!;
    const hold = held ?? of.held;
    if (hold) return `held: ${hold.reason}`;
    return firstDay > of.retestDue ? `past the retest date ${dayWords(of.retestDue)}` : null;
  };
  const unusable = drums
    .filter(({ litres }) => litres > 0)
    .flatMap((drum) => {
      const why = whyNot(drum);
      return why === null ? [] : [{ ...drum, why }];
    });
  return [...groupBy(unusable, ({ place, batch, why }) => `${place} ${batch} ${why}`).values()].map(
    (group) => {
      const { place, batch, why } = group[0]!;
      return `Not usable at ${place}: ${drumWords(group.length)} of batch ${batch}, ${litreWords(litresOf(group))}, ${why}.`;
    },
  );
}

const litresOf = (drums: readonly { readonly litres: number }[]): number =>
  drums.reduce((sum, { litres }) => sum + litres, 0);
