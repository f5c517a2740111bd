import { type IsoDate, localDate } from '@drumline/units';
import type { Draw } from '../drum.js';
import type { LedgerState } from './ledger-state.js';
import { litresOf } from './millilitres.js';

/**
 * The routine draws of a local day that stand, with their programme in `for` (conventions, "Left to draw"): what was
 * taken back and what was drawn for a medevac are not among them. Litres.
 */
export const drawnOn = (
  { drums }: Pick<LedgerState, 'drums'>,
  day: IsoDate,
  timeZone: string,
): readonly Draw[] =>
  [...drums.values()].flatMap(({ history }) =>
    history.flatMap(({ movement, reversedBy, sameAs }) => {
      if (movement.kind !== 'drawn' || movement.medevac !== undefined) return [];
      if (reversedBy.length > 0 || sameAs !== null) return [];
      if (localDate(movement.happenedAt, timeZone) !== day) return [];
      const { place, programme, millilitres } = movement;
      return [{ date: day, place, litres: litresOf(millilitres), for: programme }];
    }),
  );
