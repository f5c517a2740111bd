import { type IsoDate, localDate } from '@drumline/units';
import type { Draw } from '../drum.js';
import type { DrumMove } from '../project-caches.js';
import type { LedgerState } from './ledger-state.js';
import { litresOf } from './millilitres.js';
import type { Movement } from './movement.js';

type Drums = Pick<LedgerState, 'drums'>;

/**
 * The routine draws of a local day that stand, with their programme in `for` (conventions, "Left to do"): what was
 * taken back and what was drawn for a medevac are not among them. Litres.
 */
export const drawnOn = (state: Drums, day: IsoDate, timeZone: string): readonly Draw[] =>
  standing(state).flatMap((movement) => {
    if (movement.kind !== 'drawn' || movement.medevac !== undefined) return [];
    if (localDate(movement.happenedAt, timeZone) !== day) return [];
    const { place, programme, millilitres } = movement;
    return [{ date: day, place, litres: litresOf(millilitres), for: programme }];
  });

/** The drums that were set down from under a helicopter on a local day or since, one a line. */
export const slungSince = (state: Drums, day: IsoDate, timeZone: string): readonly DrumMove[] =>
  standing(state).flatMap((movement) => {
    if (movement.kind !== 'slung') return [];
    const date = localDate(movement.happenedAt, timeZone);
    return date < day ? [] : [{ date, from: movement.from, to: movement.to, drums: 1 }];
  });

/** Neither taken back nor the same as another. */
const standing = ({ drums }: Drums): readonly Movement[] =>
  [...drums.values()].flatMap(({ history }) =>
    history
      .filter(({ reversedBy, sameAs }) => reversedBy.length === 0 && sameAs === null)
      .map(({ movement }) => movement),
  );
