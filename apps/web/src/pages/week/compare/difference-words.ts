import { inWords } from '../../../ui/qty.js';
import { limitWords } from '../box-words.js';
import type { ComparedFlight, FlightChange } from './differences-read.js';

/** Words of a cell, what is new in bold. */
export type Words = readonly { readonly text: string; readonly isNew: boolean }[];

/** "Tue 15" of a day. */
export type DayWords = (date: string) => string;

export const routeWords = ({ from, stops }: ComparedFlight): string =>
  [from, ...stops.map(({ place }) => place)].join('-');

export const drumsWords = ({ stops, drums }: ComparedFlight): string =>
  stops.length < 2 ? inWords(drums, 'drums') : `${stops.map((stop) => stop.drums).join(' and ')} drums`;

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
  if (reason.protects === null) return 'Nothing falls short without it.';
  const { place, date, level } = reason.protects;
  if (level === 'short of the end target') return `For what ${place} is to hold at the end.`;
  return level === 'run out'
    ? `${place} runs out without it, ${day(date)}.`
    : `Keeps ${place} ${level.replace('below', 'above')}, ${day(date)}.`;
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
