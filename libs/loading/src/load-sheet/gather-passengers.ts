import { kilograms, pounds } from '@drumline/units';
import { countWords } from '../wording.js';
import type { SheetCargo } from './load-sheet.js';

/** "passenger 3", as passengers are named one by one. */
const isPassenger = ({ name }: { readonly name: string }): boolean => /^passenger \d+$/.test(name);

/**
 * Passengers of the same legs in one row, with their seats and the sum of their whole pounds; everything else as it is. A
 * printed column adds up as before, and a full cabin does not run over the page.
 */
export function gatherPassengers(cargo: readonly SheetCargo[]): readonly SheetCargo[] {
  const rows = new Map<string, readonly SheetCargo[]>();
  for (const one of cargo) {
    const row = isPassenger(one) ? `${one.firstLeg} ${one.lastLeg}` : `${rows.size} ${one.name}`;
    rows.set(row, [...(rows.get(row) ?? []), one]);
  }
  return [...rows.values()].map((row) => (isPassenger(row[0]!) ? together(row) : row[0]!));
}

const together = (people: readonly SheetCargo[]): SheetCargo => ({
  ...people[0]!,
  name: countWords(people.length, 'passenger'),
  place: people.some(({ place }) => place === null) ? null : people.map(({ place }) => place).join(' '),
  kg: kilograms(people.reduce((sum, { kg }) => sum + kg, 0)),
  lb: pounds(people.reduce((sum, { lb }) => sum + lb, 0)),
});
