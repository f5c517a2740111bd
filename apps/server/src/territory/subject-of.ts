import type { Kind } from './kinds.js';

/** What people call a thing: its own name, of what there is one of only what it is, else where and when. */
export const subjectOf = (
  { singular, idOf }: Pick<Kind, 'singular' | 'idOf'>,
  id: string,
  data: unknown,
): string => {
  if (id === 'current') return singular;
  const words = idOf === null ? placeAndDay((data ?? {}) as Facts) : id;
  return `${singular} ${words === '' ? id : words}`;
};

type Facts = Readonly<Record<string, unknown>>;

const placeAndDay = ({ helicopter, place, from, to, date }: Facts): string =>
  [helicopter, place, from === undefined ? undefined : `${from}-${to}`, date]
    .filter((word) => typeof word === 'string')
    .join(', ');
