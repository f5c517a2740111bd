import type { Movement } from './movement.js';
import type { Raised, RaisedKind } from './raised.js';

/** What concerns a raised thing, and its words. */
export interface RaisedWords {
  readonly drum?: string;
  readonly place?: string;
  readonly flight?: string;
  readonly what: string;
  readonly whatNext: string;
}

/** Something to look at, named after its kind and the movements that made it. */
export function raise(
  kind: RaisedKind,
  movements: readonly Pick<Movement, 'id'>[],
  { drum, place, flight, what, whatNext }: RaisedWords,
): Raised {
  const ids = movements.map(({ id }) => id).sort();
  return {
    id: [kind, drum ?? place ?? '', ...ids].join(' | '),
    kind,
    drum: drum ?? null,
    place: place ?? null,
    flight: flight ?? null,
    movements: ids,
    what,
    whatNext,
  };
}
