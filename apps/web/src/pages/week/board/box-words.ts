import { inWords } from '../../../ui/qty.js';
import type { WeekBooked, WeekFlight } from '../week-read.js';

/** What stands over a flight that waits for a word; null: it waits for none. */
export const bandWords = (
  flight: WeekBooked | Pick<WeekFlight, 'state' | 'needsDecision' | 'unheard'>,
): string | null => {
  if ('unheard' in flight && flight.unheard)
    return flight.state === 'offered' ? 'Its day is over' : 'Did it fly?';
  return flight.needsDecision === null ? null : 'Needs a decision';
};

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

type Binding = Pick<WeekFlight, 'binding' | 'drums' | 'drumsPossible'>;

/** "binds: " and "XLOR landing"; where fewer drums go than possible nothing binds: "2 more would go". */
export const bindingLong = (flight: Binding): readonly [lead: string, words: string] =>
  bindsAt(flight, (place) => place);

export const bindingWords = (flight: Binding): string => bindingLong(flight).join('');

/** The same where there is little room: the strip stands in the route, and "binds: strip " may be left to the key. */
export const bindingShort = (flight: Binding): readonly [lead: string, words: string] => {
  const [lead, words] = bindsAt(flight, () => 'strip');
  return words.startsWith('strip ') ? [`${lead}strip `, words.slice('strip '.length)] : [lead, words];
};

const bindsAt = (
  { binding, drums, drumsPossible }: Binding,
  named: (place: string | null) => string | null,
): readonly [lead: string, words: string] => {
  if (binding === null) return ['', 'no drums'];
  if (drums < drumsPossible) return ['', `${drumsPossible - drums} more would go`];
  return ['binds: ', limitWords(binding.name, named(binding.place))];
};

/** Where there is room for one short word only; the key says what it is short for. */
const limitMarks: Readonly<Record<string, string>> = {
  'max take-off weight': 'MTOW',
  'strip take-off limit': 't/o',
  'max landing weight': 'MLW',
  'strip landing limit': 'ldg',
  'max zero-fuel weight': 'ZFW',
  'fuel capacity': 'fuel',
  'drum positions': 'pos',
  'floor limit': 'floor',
  'passengers aboard': 'pax',
  'closed when soft': 'soft',
  'type not approved': 'type',
  'unload or stay': 'stay',
};

export const bindingMark = ({ binding, drums, drumsPossible }: Binding): string =>
  binding === null || drums < drumsPossible ? '' : (limitMarks[binding.name] ?? binding.name);

/** "ldg strip landing": the marks of these flights, each once. */
export const markKey = (flights: readonly WeekFlight[]): readonly string[] => {
  const names = new Set(
    flights.flatMap((flight) =>
      flight.binding === null || bindingMark(flight) === '' ? [] : [flight.binding.name],
    ),
  );
  return [...names].flatMap((name) => {
    const mark = limitMarks[name];
    return mark === undefined ? [] : [`${mark} ${limitWords(name, 'strip')}`];
  });
};

/** "off 07:30, takes 1.6 h", "takes 1.6 h, hour not set". */
export const bookedTime = ({ departs, heldHours }: Pick<WeekBooked, 'departs' | 'heldHours'>): string => {
  const takes = `takes ${inWords(heldHours, 'h', 1)}`;
  return departs === null ? `${takes}, hour not set` : `off ${departs}, ${takes}`;
};

/** What a booked flight has aboard, and what it could take: two short lines. */
export const bookedWords = ({ purpose, passengers, spareDrums }: WeekBooked): readonly [string, string] => [
  passengers > 0 ? inWords(passengers, 'passengers') : purpose,
  spareDrums === null
    ? ''
    : spareDrums === 0
      ? 'no drums'
      : `spare ${spareDrums} ${spareDrums === 1 ? 'drum' : 'drums'}`,
];
