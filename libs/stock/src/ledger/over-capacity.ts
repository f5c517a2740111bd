import type { Litres } from '@drumline/units';
import type { Cache } from '../drum.js';
import type { PlaceBalance } from './ledger-state.js';
import { litresOf } from './millilitres.js';
import { raise } from './raise.js';
import type { Raised } from './raised.js';

/** A cache that holds more than its capacity, or null (conventions, "Capacity": litres / fill, empties do not count). */
export function overCapacity(
  balance: PlaceBalance | undefined,
  { place, capacityDrums }: Pick<Cache, 'place' | 'capacityDrums'>,
  fillLitres: Litres,
): Raised | null {
  const drums = balance ? litresOf(balance.bookMillilitres) / fillLitres : 0;
  if (drums <= capacityDrums) return null;
  return raise('over capacity', [], {
    place,
    what: `${place} holds fuel for ${Math.ceil(drums)} drums; its capacity is ${capacityDrums}.`,
    whatNext: 'Ask for a count, move drums on, or have the capacity raised.',
  });
}
