import { rebalance } from './balance.js';
import type { DrumState, LedgerState, Where } from './ledger-state.js';

type Standing = Pick<LedgerState, 'drums' | 'balances'>;

/**
 * Drums that a flight brings back, with where they are. The crew says so where it takes the drum, and the book has it at
 * the end of the flight from then on; it is aboard until the flight is down. `isDown`: by the flight's id.
 */
export function ridingHome(
  { drums, movements }: Pick<LedgerState, 'drums' | 'movements'>,
  isDown: (flight: string) => boolean,
): ReadonlyMap<string, Where> {
  return new Map(
    [...drums.values()].flatMap(({ number, steps }) => {
      const last = movements.get(steps.at(-1)?.movement ?? '');
      if (last?.kind !== 'brought home' || isDown(last.flight)) return [];
      const { flight, leg, place } = last;
      const loaded = steps.findLast(({ where }) => where.kind === 'aboard' && where.flight === flight)?.where;
      const from = loaded?.kind === 'aboard' ? loaded.from : place;
      return [[number, { kind: 'aboard', flight, leg, from }] as const];
    }),
  );
}

/** What stands at places, without the drums that ride home: those are aboard, and no place has them in its book. */
export function withRiding<Stock extends Standing>(stock: Stock, riding: ReadonlyMap<string, Where>): Stock {
  const before = [...riding.keys()].flatMap((number) => stock.drums.get(number) ?? []);
  if (before.length === 0) return stock;
  const after = before.map((drum): DrumState => ({ ...drum, where: riding.get(drum.number)! }));
  return {
    ...stock,
    drums: new Map([...stock.drums, ...after.map((drum) => [drum.number, drum] as const)]),
    balances: rebalance(stock.balances, before, after),
  };
}
