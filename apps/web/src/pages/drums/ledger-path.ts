import type { Movement } from '@drumline/stock';
import { addDays, instantOf, isValidDate } from '@drumline/units';

/** The ledger's entries as the words of the address ask for them: place, drum, days, and after which entry. */
export const ledgerPath = (word: (name: string) => string, timeZone: string): string => {
  const query = new URLSearchParams({ limit: '100' });
  const set = (name: string, value: string | null) => value && query.set(name, value);
  set('place', word('place'));
  set('drum', word('of').trim());
  set('from', dayStart(word('from'), timeZone));
  set('until', isValidDate(word('to')) ? dayStart(addDays(word('to'), 1), timeZone) : null);
  set('after', word('after'));
  return `/api/movements?${query}`;
};

const dayStart = (day: string, timeZone: string): string | null =>
  isValidDate(day) ? new Date(instantOf(day, '00:00', timeZone)).toISOString() : null;

/** Numbers that an entry names. */
export const drumsOf = (movement: Movement): readonly string[] => {
  if ('drum' in movement) return [movement.drum];
  return 'of' in movement && 'drum' in movement.of ? [movement.of.drum] : [];
};
