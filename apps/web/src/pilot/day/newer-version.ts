import type { PhoneFlight } from '@drumline/contract';
import { sheetName } from '@drumline/loading';
import { pounds, print } from '@drumline/units';
import { numbersOf } from './opened-flight.js';

export interface DifferenceRow {
  readonly of: string;
  readonly opened: string;
  readonly newest: string;
}

/** What the one is called beside the other. */
export const nameOf = ({ version, sheet }: PhoneFlight, other: PhoneFlight): string =>
  sheetName({ version, checkCode: sheet?.checkCode ?? null }, other);

/** Another version, or the same one that says other things by what has become known. */
export const newsOf = (opened: PhoneFlight, newest: PhoneFlight): string => {
  if (newest.version !== opened.version) return `Version ${newest.version} has come in.`;
  const known = placesOf(opened, newest).flatMap((place) => {
    const [before, after] = [opened, newest].map((flight) => legTo(flight, place)?.surface ?? '');
    return before === after ? [] : [`${place} (was ${before}, now ${after})`];
  });
  const what =
    known.length === 0 ? `What version ${newest.version} says` : `What is known of ${known.join(', ')}`;
  return `${what} has changed since you opened ${nameOf(opened, newest)}.`;
};

/** What the two loads do not have in common: the drums first, then where they stand, then the flight. */
export const differences = (opened: PhoneFlight, newest: PhoneFlight): readonly DifferenceRow[] => {
  const [before, after] = [numbersOf(opened), numbersOf(newest)];
  const row = (of: string, told: (flight: PhoneFlight) => string): DifferenceRow => ({
    of,
    opened: told(opened),
    newest: told(newest),
  });
  const rows: readonly DifferenceRow[] = [
    row('Drums', (flight) => String(numbersOf(flight).length)),
    { of: 'Off the load', opened: '', newest: before.filter((number) => !after.includes(number)).join(' ') },
    { of: 'Onto the load', opened: '', newest: after.filter((number) => !before.includes(number)).join(' ') },
    ...before
      .filter((number) => after.includes(number))
      .flatMap((number) => [
        row(`${number} in`, (flight) => drumOf(flight, number)?.position ?? ''),
        row(`${number} to`, (flight) => drumOf(flight, number)?.leaveAt ?? stopOf(flight, number)),
      ]),
    row('Other load', ({ sheet }) => sheet?.cargo.map(({ name }) => name).join(', ') ?? ''),
    row('Aircraft', ({ aircraft }) => aircraft),
    row('Pilot', ({ sheet }) => sheet?.flight.pilot ?? ''),
    row('Day', ({ date }) => dayOf.format(new Date(date))),
    row('Off at', ({ departs }) => departs),
    row('Route', ({ route }) => route.join(' ')),
    ...placesOf(opened, newest).flatMap((place) => [
      row(`Leave for ${place} by`, (flight) => legTo(flight, place)?.goBack.latestLeave.at ?? ''),
      row(`${place} is`, (flight) => legTo(flight, place)?.surface ?? ''),
      row(`Lands ${place}`, (flight) => lbWords(landingAt(flight, place)?.lb)),
      row(`Limit ${place}`, (flight) => lbWords(landingAt(flight, place)?.limit?.lb)),
      row(`${place} soft`, (flight) => softWords(flight, place)),
    ]),
    row('Check code', ({ sheet }) => sheet?.checkCode ?? 'none'),
  ];
  return rows.filter((each) => each.opened !== each.newest);
};

const dayOf = new Intl.DateTimeFormat('en-GB', {
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  timeZone: 'UTC',
});

const drumOf = ({ sheet }: PhoneFlight, number: string) =>
  sheet?.drums.find((drum) => drum.number === number);

const stopOf = ({ stops }: PhoneFlight, number: string): string =>
  stops.find(({ drums }) => drums.includes(number))?.place ?? '';

/** Where either lands, the stops in the order of the one that is open. */
const placesOf = (opened: PhoneFlight, newest: PhoneFlight): readonly string[] => [
  ...new Set([...opened.route.slice(1), ...newest.route.slice(1)]),
];

const legTo = ({ sheet }: PhoneFlight, place: string) => sheet?.legs.find(({ to }) => to === place);

/** The totals that are typed blind are not among the weights. */
const landingAt = (flight: PhoneFlight, place: string) =>
  legTo(flight, place)?.rows.find(({ kind, label }) => kind === 'sum' && label.startsWith('land '));

const lbWords = (weight: number | undefined): string =>
  weight === undefined ? '' : print(pounds(weight), 'lb');

const softWords = (flight: PhoneFlight, place: string): string => {
  const ifSoft = legTo(flight, place)?.goBack.ifSoft ?? null;
  if (ifSoft === null) return '';
  const others = flight.stops.some((stop) => stop.place !== place && stop.drums.length > 0);
  if (ifSoft.take === null) return others ? 'do not go by it' : 'do not go';
  return ['take', ifSoft.take, ...(others ? [`for ${place}`] : []), ...ifSoft.moves].join(' ');
};
