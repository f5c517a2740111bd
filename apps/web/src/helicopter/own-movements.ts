import type { MovementBody, MyPlaces } from '@drumline/contract';
import type { Movement } from '@drumline/stock';
import type { ShownEntry } from '../phone/index.js';
import { takenBack } from '../phone/taken-back.js';

/** The places as base last told them. */
export interface KeptPlaces {
  readonly places: MyPlaces;
  /** Territory's time. */
  readonly at: string;
}

const address = '/api/movements/';

/** What an entry says of the stock. */
export const movementsOf = ({
  requests,
  clock,
}: Pick<ShownEntry, 'requests' | 'clock'>): readonly Movement[] =>
  requests
    .filter(({ path }) => path.startsWith(address))
    .map(({ path, body }) => ({
      ...(body as MovementBody & { readonly by: string }),
      id: path.slice(address.length),
      receivedAt: clock.at,
    })) as readonly Movement[];

/**
 * This phone's movements that are not in the places as base told them, without those that it has taken back: what base
 * knows of already goes back when base has heard. What base did not take goes by base, but for a rejected drum: whoever
 * looked into it knows why.
 */
export const notInYet = ({ places, at }: KeptPlaces, entries: readonly ShownEntry[]): readonly Movement[] => {
  const known = new Set(places.known);
  const back = takenBack(entries);
  return entries.flatMap((entry) => {
    const isHeard = entry.withBaseAt !== null && entry.withBaseAt <= at;
    const open = movementsOf(entry).filter(
      ({ id, kind }) => kind !== 'corrected' && !known.has(id) && !back.has(id),
    );
    if (!isHeard) return open;
    return entry.state === 'asks' ? open.filter(({ kind }) => kind === 'held') : [];
  });
};
