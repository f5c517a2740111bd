import { litresOf, type Movement } from '@drumline/stock';
import { print } from '@drumline/units';

/** What a crew has reported and may take back by itself. */
export type Revocable = Extract<Movement, { kind: 'drawn' | 'slung' | 'counted' | 'lost' }>;

const kinds: readonly Movement['kind'][] = ['drawn', 'slung', 'counted', 'lost'];

/** Of an entry, without what is taken back already. `back`: ids of those. */
export const revocableOf = (
  movements: readonly Movement[],
  back: ReadonlySet<string>,
): readonly Revocable[] =>
  movements.filter(
    (movement): movement is Revocable => kinds.includes(movement.kind) && !back.has(movement.id),
  );

/** "50 L drawn at XESK for P1". */
export const saidOf = (movement: Revocable): string => {
  switch (movement.kind) {
    case 'drawn':
      return `${print(litresOf(movement.millilitres), 'L')} drawn at ${movement.place} for ${movement.programme}`;
    case 'slung':
      return `set down at ${movement.to} from ${movement.from}`;
    case 'counted':
      return `${print(litresOf(movement.millilitres), 'L')} counted at ${movement.place}`;
    case 'lost':
      return `dropped on the way from ${movement.place}`;
  }
};

/** "drum 0467, 50 L drawn at XESK for P1". */
export const takenBackOf = (movement: Revocable): string =>
  'drum' in movement ? `drum ${movement.drum}, ${saidOf(movement)}` : saidOf(movement);

/** Where it is reported again. */
export const placeToReportAt = ([first]: readonly Revocable[]): string =>
  first === undefined ? '' : first.kind === 'slung' ? first.from : first.place;
