import { inWords, stockInWords } from '../../../ui/qty.js';
import { limitWords } from '../board/box-words.js';
import type { ComparedFlight, Differences, FlightChange } from './differences-read.js';

/** Words of a cell, what is new in bold. */
export type Words = readonly { readonly text: string; readonly isNew: boolean }[];

/** "Tue 15" of a day. */
export type DayWords = (date: string) => string;

export const routeWords = ({ from, stops }: ComparedFlight): string =>
  [from, ...stops.map(({ place }) => place)].join('-');

/** "6 drums", of two stops "2 and 4 drums"; where it stops for something else than drums "4 drums at XESK". */
export const drumsWords = ({ stops, drums }: ComparedFlight): string => {
  const landed = stops.filter((stop) => stop.drums > 0);
  if (landed.length === stops.length)
    return stops.length < 2
      ? inWords(drums, 'drums')
      : `${stops.map((stop) => stop.drums).join(' and ')} drums`;
  if (landed.length === 0) return 'no drums';
  return landed.map((stop) => `${inWords(stop.drums, 'drums')} at ${stop.place}`).join(', ');
};

export const flightWords = (flight: ComparedFlight, day: DayWords): string =>
  `${flight.aircraft} ${day(flight.date)}, ${routeWords(flight)}, ${drumsWords(flight)}`;

export const changeWords = ({ before, after }: FlightChange, day: DayWords): Words => {
  const load =
    drumsWords(before) === drumsWords(after)
      ? { text: 'same load', isNew: false }
      : { text: drumsWords(after), isNew: true };
  return [
    { text: after.aircraft, isNew: before.aircraft !== after.aircraft },
    { text: ' ', isNew: false },
    { text: day(after.date), isNew: before.date !== after.date },
    ...retimedWords({ before, after }),
    { text: ', ', isNew: false },
    load,
  ];
};

/** Another take-off on the same day and aircraft. */
const retimedWords = ({ before, after }: FlightChange): Words =>
  before.date === after.date && before.aircraft === after.aircraft && before.departs !== after.departs
    ? [
        { text: ` at ${after.departs}`, isNew: true },
        { text: ` (was ${before.departs})`, isNew: false },
      ]
    : [];

/** What would fall short without the flight. */
export const purposeWords = ({ reason }: ComparedFlight, day: DayWords): string => {
  if (reason.protects === null) return reason.text;
  const { place, date, level } = reason.protects;
  if (level === 'short of the end target') return `For what ${place} is to hold at the end.`;
  return level === 'run out'
    ? `${place} runs out without it, ${day(date)}.`
    : `Keeps ${place} ${level.replace('below', 'above')}, ${day(date)}.`;
};

/** What flies on the day that a moved flight leaves, with its aircraft; empty: it stays there. */
export const movedWords = (
  { before, after }: FlightChange,
  { added, moved }: Pick<Differences, 'added' | 'moved'>,
): string => {
  if (isThere(after, before)) return '';
  const came = [
    ...added,
    ...moved.filter((other) => !isThere(other.before, before)).map((other) => other.after),
  ].filter((flight) => isThere(flight, before));
  return came.length === 0
    ? 'No limit asked for it. '
    : `In its place ${came.map(routeWords).join(' and ')}. `;
};

const isThere = (flight: ComparedFlight, { date, aircraft }: ComparedFlight): boolean =>
  flight.date === date && flight.aircraft === aircraft;

/** Why a removed flight is not needed: who brings its place drums instead, and how low its stock gets then: the figure of the table. */
export const withoutWords = (removed: ComparedFlight, differences: Differences): string => {
  const { added, moved, drumsChanged, lowest } = differences;
  const place = removed.stops.find(({ drums }) => drums > 0)?.place;
  if (place === undefined) return 'It lands no drums.';
  const brought = ({ stops }: ComparedFlight): number =>
    stops.reduce((sum, stop) => (stop.place === place ? sum + stop.drums : sum), 0);
  const more =
    added.reduce((sum, flight) => sum + brought(flight), 0) +
    [...moved, ...drumsChanged].reduce((sum, { before, after }) => sum + brought(after) - brought(before), 0);
  const instead = more > 0 ? `Other flights bring ${place} ${inWords(more, 'drums')} instead. ` : '';
  const level = lowest.find((each) => each.place === place);
  if (level === undefined) return `${instead}No level of ${place} is known.`;
  const { afterLitres, minimumLitres } = level;
  return `${instead}${place} is lowest at ${stockInWords(afterLitres)} without it, minimum ${inWords(minimumLitres, 'L')}.`;
};

export const bindsWords = ({ legs }: ComparedFlight): string => {
  const tightest = legs
    .filter(({ drumsAboard }) => drumsAboard > 0)
    .toSorted((one, other) => one.spareLb - other.spareLb)[0];
  if (tightest === undefined) return '';
  const { binding, drumsAboard, drumsPossible } = tightest;
  const at = drumsAboard < drumsPossible ? ` at ${inWords(drumsPossible, 'drums')}` : '';
  return ` Binds${at}: ${limitWords(binding.name, binding.place ?? null)}.`;
};
