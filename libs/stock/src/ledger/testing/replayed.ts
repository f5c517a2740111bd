import type { Movement } from '../movement.js';
import { raisedIn } from '../raised-in.js';
import { replay } from '../replay.js';

export const kindsRaised = (movements: readonly Movement[]) =>
  raisedIn(replay(movements)).map(({ kind }) => kind);
export const drum = (movements: readonly Movement[], number = '0451') => replay(movements).drums.get(number)!;
