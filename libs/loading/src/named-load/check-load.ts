import { pounds, print } from '@drumline/units';
import { type BalanceReport, checkBalance } from '../check-balance.js';
import { type MoveSuggestion, suggestMove } from '../suggest-move.js';
import { cabinOf, drumsAboard, type NamedLoad, printedCabinOf } from './named-load.js';
import { type WeighedLeg, weighLoad } from './weigh-load.js';

/** What is to be said of a named load: weights, balance, and what would mend it. */
export interface LoadReport {
  readonly holds: boolean;
  readonly legs: readonly WeighedLeg[];
  /** With the printed weights, as a person with the sheet works it out. */
  readonly balance: BalanceReport;
  /** Everything that stands in the way, in sentences. */
  readonly faults: readonly string[];
  /** The least handling that mends the balance; null: nothing to mend, or no standing of these drums holds. */
  readonly mend: MoveSuggestion | null;
}

/**
 * Checks a flight with named drums, each with its own weight in its position: weights against every limit, and the
 * balance of every leg; both with the exact and with the printed figures. A hand-made loading that fails gets the fewest
 * moves that mend it ("move two drums from row 3 to row 1").
 */
export function checkLoad(load: NamedLoad): LoadReport {
  const legs = weighLoad(load);
  const balance = checkBalance(printedCabinOf(load), drumsAboard(load.drums, 'printed'));
  const exact = checkBalance(cabinOf(load), drumsAboard(load.drums, 'exact'));
  const unbalanced = balance.holds ? exact : balance;
  const faults = [
    ...legs.flatMap(weightFaults),
    ...unbalanced.faults.map(({ leg, text }) => `${leg}: ${text}`),
  ];
  return {
    holds: faults.length === 0,
    legs,
    balance,
    faults,
    mend: unbalanced.holds ? null : mendingMove(load),
  };
}

/** Moves after which the load balances by exact and by printed figures. */
function mendingMove(load: NamedLoad): MoveSuggestion | null {
  const tries = [
    [cabinOf(load), 'exact', printedCabinOf(load), 'printed'],
    [printedCabinOf(load), 'printed', cabinOf(load), 'exact'],
  ] as const;
  for (const [cabin, as, otherCabin, otherAs] of tries) {
    const move = suggestMove(cabin, drumsAboard(load.drums, as));
    if (!move) continue;
    const positions = new Map(move.drums.map(({ id, position }) => [id, position]));
    const moved = load.drums.map((drum) => ({ ...drum, position: positions.get(drum.number)! }));
    if (checkBalance(otherCabin, drumsAboard(moved, otherAs)).holds) return move;
  }
  return null;
}

function weightFaults({ from, to, limits, forbiddenBy }: WeighedLeg): string[] {
  const over = limits
    .filter(({ holds }) => !holds)
    .map(({ name, place, limitLb, spareLb }) => {
      const limit = `${place === null ? '' : `${place} `}${name} ${print(limitLb, 'lb')}`;
      // Over by less than a pound of the exact sum only: the printed one is on the limit.
      return `${from}-${to}: ${print(pounds(Math.max(1, -spareLb)), 'lb')} over ${limit}`;
    });
  return [...(forbiddenBy === null ? [] : [`${from}-${to}: ${forbiddenBy}`]), ...over];
}
