import { inWords } from '../../ui/index.js';
import type { Booked, Flight, Sling } from './map-read.js';

/** How a leg is drawn: the firmer the flight, the firmer its line. */
export type LegLine = 'in question' | 'offered' | 'approved' | 'away' | 'flown' | 'booked' | 'sling';

/** One line on the chart. */
export interface Leg {
  readonly key: string;
  readonly line: LegLine;
  readonly from: string;
  readonly to: string;
  /** "F05, 6 drums"; empty on the way home. */
  readonly label: string;
}

/** A flight or a sling move as a line of the table, with its lines on the chart. */
export interface Moved {
  readonly id: string;
  readonly aircraft: string;
  readonly state: string;
  readonly route: readonly string[];
  /** "6 drums", "spare 2 drums", "4 passengers"; of a sling "4 drums, 2 of a flight that needs a decision". */
  readonly load: string;
  readonly drums: number;
  readonly needsDecision: string | null;
  readonly legs: readonly Leg[];
}

interface Day {
  readonly flights: readonly Flight[];
  readonly booked: readonly Booked[];
  readonly slings: readonly Sling[];
}

/** What moves on a day. What was declined or called off does not. */
export const movedOn = ({ flights, booked, slings }: Day): readonly Moved[] => [
  ...flights.filter(({ state }) => !['declined', 'called off'].includes(state)).map(flown),
  ...booked.map(bookedMove),
  ...slings.map(slung),
];

const flown = (flight: Flight): Moved => {
  const { id, aircraft, state, stops, needsDecision } = flight;
  const route = [flight.fromPlace, ...stops.map(({ place }) => place), flight.toPlace];
  const drums = stops.reduce((sum, stop) => sum + stop.drums, 0);
  const aboard = (leg: number) => stops.slice(leg).reduce((sum, stop) => sum + stop.drums, 0);
  const label = (leg: number) =>
    aboard(leg) === 0
      ? ''
      : `${id}, ${inWords(aboard(leg), 'drums')}${needsDecision === null ? '' : ', needs a decision'}`;
  const line = needsDecision === null ? lineOf(state) : 'in question';
  return {
    id,
    aircraft,
    state,
    route,
    load: inWords(drums, 'drums'),
    drums,
    needsDecision,
    legs: legsOf(id, route, line, label),
  };
};

const lineOf = (state: string): LegLine => {
  if (['idea', 'offered'].includes(state)) return 'offered';
  if (['approved', 'given'].includes(state)) return 'approved';
  if (['home', 'reported', 'closed'].includes(state)) return 'flown';
  return 'away';
};

const bookedMove = ({ id, aircraft, route, passengers, spareDrums }: Booked): Moved => {
  const aboard = passengers > 0 ? [inWords(passengers, 'passengers')] : [];
  const spare = spareDrums === null || spareDrums === 0 ? [] : [`spare ${inWords(spareDrums, 'drums')}`];
  const load = [...aboard, ...spare].join(', ') || 'no drums';
  const legs = legsOf(id, route, 'booked', (leg) => (leg === 0 ? `${id}, ${load}` : ''));
  return { id, aircraft, state: 'booked', route, load, drums: 0, needsDecision: null, legs };
};

const slung = ({ helicopter, from, to, drums, load: takes, inQuestion }: Sling): Moved => {
  const going =
    takes.drums < drums ? `${takes.drums} of ${inWords(drums, 'drums')}` : inWords(drums, 'drums');
  const asked = inQuestion.drums;
  const load = asked === 0 ? going : `${going}, ${asked} of a flight that needs a decision`;
  const id = `Sling ${from}-${to}`;
  const label = () => `Sling, ${going}${asked === 0 ? '' : ' ?'}`;
  const legs = legsOf(`${id} ${helicopter}`, [from, to], 'sling', label);
  return {
    id,
    aircraft: helicopter,
    state: 'sling',
    route: [from, to],
    load,
    drums,
    needsDecision: null,
    legs,
  };
};

/** The way back over the same ground is not drawn a second time. */
const legsOf = (
  id: string,
  route: readonly string[],
  line: LegLine,
  label: (leg: number) => string,
): readonly Leg[] => {
  const drawn = new Set<string>();
  return route.slice(1).flatMap((to, leg) => {
    const from = route[leg]!;
    if (drawn.has(pairOf(from, to)) && label(leg) === '') return [];
    drawn.add(pairOf(from, to));
    return [{ key: `${id} ${leg}`, line, from, to, label: label(leg) }];
  });
};

/** Both ways are one pair. */
export const pairOf = (from: string, to: string): string => [from, to].sort().join('-');

/** "Tue 15 June 2027: 3 flights, 15 drums; 1 sling move." */
export const dayInWords = (moved: readonly Moved[], date: string): string => {
  const slings = moved.filter(({ state }) => state === 'sling').length;
  const flights = moved.length - slings;
  const drums = moved.filter(({ state }) => state !== 'sling').reduce((sum, each) => sum + each.drums, 0);
  if (moved.length === 0) return `${date}: nothing flies.`;
  return `${date}: ${inWords(flights, 'flights')}, ${inWords(drums, 'drums')}${
    slings === 0 ? '' : `; ${inWords(slings, 'sling moves')}`
  }.`;
};
