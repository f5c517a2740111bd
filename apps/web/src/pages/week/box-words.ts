import type { WeekBooked, WeekFlight } from './week-read.js';

/** The firmer the flight, the firmer its line. */
export type BoxLine = 'off' | 'offered' | 'approved' | 'given' | 'away' | 'flown' | 'booked';

const lines: Readonly<Record<string, BoxLine>> = {
  declined: 'off',
  'called off': 'off',
  idea: 'offered',
  offered: 'offered',
  approved: 'approved',
  given: 'given',
  loaded: 'away',
  away: 'away',
  'turned back': 'away',
  'ended elsewhere': 'away',
  home: 'flown',
  reported: 'flown',
  closed: 'flown',
};

export const lineOf = ({ kind, state }: Pick<WeekFlight, 'kind' | 'state'>): BoxLine =>
  kind === 'booked' ? 'booked' : (lines[state] ?? 'approved');

/** A re-plan leaves it alone. */
export const isFrozen = ({ state, heldInPlace }: Pick<WeekFlight, 'state' | 'heldInPlace'>): boolean =>
  heldInPlace || !['idea', 'offered', 'declined', 'called off'].includes(state);

/** A limit as one says it, short: "XLOR landing". */
export const limitWords = (name: string, place: string | null): string => {
  const at = place ?? '';
  const words: Readonly<Record<string, string>> = {
    'max take-off weight': 'take-off weight',
    'strip take-off limit': `${at} take-off`,
    'max landing weight': 'landing weight',
    'strip landing limit': `${at} landing`,
    'max zero-fuel weight': 'zero-fuel weight',
    'drum positions': 'positions',
    'passengers aboard': 'passengers',
    'closed when soft': `${at} closed when soft`,
    closed: `${at} closed`,
    'type not approved': `${at} not approved`,
  };
  return words[name] ?? name;
};

/** "binds: XLOR landing", or how many more would go. */
export const bindingWords = ({ drums, drumsPossible, binding }: WeekFlight): string => {
  if (binding === null) return 'no drums';
  if (drums < drumsPossible) return `room for ${drumsPossible}`;
  return `binds: ${limitWords(binding.name, binding.place)}`;
};

/** The same where there is little room: the strip stands in the route, and "binds: " may be left to the key. */
export const bindingShort = (flight: WeekFlight): readonly [lead: string, words: string] => {
  const { drums, drumsPossible, binding } = flight;
  return binding === null || drums < drumsPossible
    ? ['', bindingWords(flight)]
    : ['binds: ', limitWords(binding.name, 'strip')];
};

/** What a booked flight has aboard, and what it could take: two short lines. */
export const bookedWords = ({ purpose, passengers, spareDrums }: WeekBooked): readonly [string, string] => [
  passengers > 0 ? `${passengers} ${passengers === 1 ? 'passenger' : 'passengers'}` : purpose,
  spareDrums === null
    ? ''
    : spareDrums === 0
      ? 'no drums'
      : `spare ${spareDrums} ${spareDrums === 1 ? 'drum' : 'drums'}`,
];
