import type { IsoInstant } from '@drumline/units';
import { rebalance } from './balance.js';
import type { DrumState, DrumStep, LedgerState, Where } from './ledger-state.js';
import type { Movement } from './movement.js';
import { compareInstants } from './order.js';

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
      return [[number, aboardOf(steps, last)] as const];
    }),
  );
}

/**
 * The ledger with each drum that a flight brought back aboard it until the flight was down, whenever that was: what stood
 * at a place at a moment is read from its steps. `downAt`: by the flight's id; null: it is not down; undefined: nobody
 * knows, and the drum is home where its crew says so.
 */
export function asLanded<State extends Pick<LedgerState, 'drums' | 'movements'>>(
  state: State,
  downAt: (flight: string) => IsoInstant | null | undefined,
): State {
  const landed = (drum: DrumState): DrumState => ({
    ...drum,
    steps: drum.steps.flatMap((step, index) => {
      const movement = state.movements.get(step.movement);
      const down = movement?.kind === 'brought home' ? downAt(movement.flight) : undefined;
      if (movement?.kind !== 'brought home' || down === undefined) return [step];
      const aboard = { ...step, where: aboardOf(drum.steps, movement) };
      const next = drum.steps[index + 1];
      if (down === null || (next !== undefined && compareInstants(down, next.from) >= 0)) return [aboard];
      return compareInstants(down, step.from) > 0 ? [aboard, { ...step, from: down }] : [step];
    }),
  });
  return {
    ...state,
    drums: new Map([...state.drums].map(([number, drum]) => [number, landed(drum)] as const)),
  };
}

/** Aboard the flight that brings it home, from where it was loaded. */
const aboardOf = (
  steps: readonly DrumStep[],
  { flight, leg, place }: Extract<Movement, { readonly kind: 'brought home' }>,
): Where => {
  const loaded = steps.findLast(({ where }) => where.kind === 'aboard' && where.flight === flight)?.where;
  return { kind: 'aboard', flight, leg, from: loaded?.kind === 'aboard' ? loaded.from : place };
};

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
