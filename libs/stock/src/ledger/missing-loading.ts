import { raise } from './raise.js';
import type { Raised } from './raised.js';

/**
 * One thing to look at a flight, with its drums in it: they came off it, each raised as "not aboard", and one loading that
 * nobody reported is behind them all. Where the book had each drum stands on the drum itself.
 */
export function missingLoading(flight: string, notAboard: readonly Raised[]): Raised {
  const drums = [...new Set(notAboard.flatMap(({ drum }) => drum ?? []))].sort();
  const [drum] = drums;
  const came =
    drums.length === 1
      ? `drum ${drum} came off it, and nobody has reported it loaded on it`
      : `${drums.length} drums came off it, and nobody has reported them loaded on it: ${drums.join(', ')}`;
  const movements = notAboard.flatMap(({ movements: ids }) => ids.map((id) => ({ id })));
  const raised = raise('not aboard', movements, {
    flight,
    ...(drums.length === 1 ? { drum: drum! } : {}),
    what: `${flight}: ${came}.`,
    whatNext: `Enter the loading that is missing, or correct the ${drums.length === 1 ? 'number' : 'numbers'}.`,
  });
  return { ...raised, id: `not aboard | ${flight}` };
}
