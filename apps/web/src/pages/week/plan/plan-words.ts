import { figure } from '../../../ui/qty.js';
import type { EndTarget } from './plan-form.js';
import type { ListedPlan, PlanProgress } from './plan-read.js';

const stateWords: Readonly<Record<ListedPlan['state'], string>> = {
  queued: 'waits for its turn',
  solving: 'being made',
  solved: 'made',
  infeasible: 'no plan possible',
  failed: 'failed',
  cancelled: 'stopped, best so far kept',
};

/** "Offered: F08, F010." in the order of their numbers, not of their aircraft. */
export const offeredWords = (flights: readonly { readonly flight: string }[]): string =>
  `Offered: ${flights
    .map(({ flight }) => flight)
    .toSorted((one, other) => one.localeCompare(other, 'en', { numeric: true }))
    .join(', ')}.`;

/** "made", "being made": what has become of a run. */
export const stateOf = ({ state, cost, acceptedByName }: ListedPlan): string => {
  if (acceptedByName !== null) return 'accepted';
  if (state === 'cancelled' && cost === null) return 'stopped, no plan kept';
  return stateWords[state];
};

const targets: Readonly<Record<EndTarget, string>> = {
  'hand plan': 'end as the plan made by hand',
  operator: "operator's end targets",
  minimum: 'minimums only',
};

export const targetWords = (target: EndTarget): string => targets[target];

const money = (cents: number, currency: string): string => `${figure(Math.round(cents / 100))} ${currency}`;

/** "at most 237 cr, 0.45 % of its cost". */
export const gapWords = ({ moneyGap }: Pick<ListedPlan, 'moneyGap'>, currency: string): string =>
  moneyGap === null
    ? 'not known'
    : `at most ${money(moneyGap.savedAtMost, currency)}, ${shareWords(moneyGap.share)} of its cost`;

/** "2.1 %", "0.45 %": a share of a plan's cost in flight, fuel and handling. */
export const shareWords = (share: number): string => `${figure(share * 100, share < 0.01 ? 2 : 1)} %`;

/** The share from which a bound says next to nothing. */
const weakShare = 0.25;

/** Why the figure is wide, where it is; undefined: it is not. */
export const weakProofWords = ({ moneyGap }: Pick<ListedPlan, 'moneyGap'>): string | undefined =>
  moneyGap !== null && moneyGap.share >= weakShare
    ? 'A weak proof: it reckons with parts of flights, which says little of a plan with few flights or with a shortage.'
    : undefined;

interface ProgressWords {
  /** Flight, fuel and handling of the best plan so far: what is paid. */
  readonly cost: string;
  /** What is short or changed in it, at its price: counted, not paid. */
  readonly counted: string;
  readonly best: string;
  readonly bound: string;
  readonly gap: string;
}

/** Where a search stands: what is paid, and what is counted for shortages and changes so that plans can be compared. */
export const progressWords = (progress: PlanProgress | null, currency: string): ProgressWords => {
  const best = progress?.best ?? null;
  const bound = progress !== null && progress.bound !== null && progress.bound > 0 ? progress.bound : null;
  const paid = best === null ? null : (progress?.bestMoney ?? null);
  return {
    cost: best === null ? 'none yet' : paid === null ? 'not told' : money(paid, currency),
    counted:
      best === null
        ? 'none yet'
        : paid === null
          ? 'not told'
          : best - paid < 1
            ? 'nothing'
            : `${money(best - paid, currency)}, not paid`,
    best: best === null ? 'none yet' : money(best, currency),
    bound: bound === null ? 'nothing proved yet' : money(bound, currency),
    gap:
      best === null || bound === null
        ? 'not known yet'
        : `${money(Math.max(0, best - bound), currency)}, ${figure(Math.max(0, (best - bound) / best) * 100, 1)} % of best`,
  };
};
