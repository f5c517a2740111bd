import type { Calendar } from '../../api/index.js';
import { figure, inWords } from '../../ui/index.js';
import { stillToSignWords } from '../../ui/still-to-sign.js';
import type { DecideRow } from './decide-row.js';
import type { Morning } from './morning-read.js';
import { ageWords } from './not-heard-rows.js';
import { raisedRows } from './raised-rows.js';
import { belowRows, fillRows, noPlanRows, slingRows } from './short-rows.js';

type Flight = Morning['flights'][number];
type Unheard = Morning['didTheyFly'][number];

/**
 * First what can hurt people: the calls that a hold asks for, as somebody may draw from its drums, and what is raised of loads
 * and fuel. Then the flights of days that are over: where an aeroplane is comes before what is still to fly. Then by the time it
 * waits since, is due or falls; flights of days after tomorrow as one line a day; last what only has to be seen.
 * `isOfBefore`: base is silent, and the picture is the last one that came.
 */
export const decideRows = (
  morning: Morning,
  calendar: Calendar,
  isOfBefore = false,
): readonly DecideRow[] => {
  const soon = morning.flights.filter((flight) => isSoon(flight, morning));
  const later = morning.flights.filter((flight) => !isSoon(flight, morning));
  const days = [...new Set(later.map(({ date }) => date))];
  const due: readonly (readonly [at: string, row: DecideRow])[] = [
    ...noPlanRows(morning, calendar, isOfBefore),
    ...soon.map((flight) => [flight.by, flightRow(flight, calendar, morning.asOf)] as const),
    ...morning.booked.map((each) => [each.by, bookedRow(each, calendar)] as const),
    ...morning.cases.map((each) => [each.at, caseRow(each, calendar)] as const),
    ...morning.proposals.map((each) => [each.proposedAt, proposalRow(each, calendar)] as const),
    ...fillRows(morning, calendar),
    ...belowRows(morning, calendar),
    ...slingRows(morning, calendar),
    ...days.map((day) => {
      const ofDay = later.filter(({ date }) => date === day);
      return [ofDay[0]!.by, dayRow(ofDay, calendar)] as const;
    }),
  ];
  const key = (at: string) => dueKey(at, calendar);
  const inOrder = due.toSorted(([one], [other]) =>
    key(one) < key(other) ? -1 : key(one) > key(other) ? 1 : 0,
  );
  return [
    ...morning.openCalls.map((each) => callsRow(each, calendar)),
    ...raisedRows(morning, 'now'),
    ...morning.didTheyFly.map((flight) => unheardRow(flight, calendar)),
    ...inOrder.map(([, row]) => row),
    ...raisedRows(morning, 'to see'),
  ];
};

/** "2027-06-15 17:00" as it is read at the territory; a day without a time comes before its hours, its evening, 24:00, after them. */
const dueKey = (at: string, { isoDay, time }: Calendar): string =>
  /^\d{4}-\d\d-\d\d( 24:00)?$/.test(at) ? at : `${isoDay(at)} ${time(at)}`;

/** Marked, or to be decided within a day. */
const isSoon = ({ needsDecision, by }: Flight, { asOf }: Morning): boolean =>
  needsDecision !== null || Date.parse(by) - Date.parse(asOf) < 24 * 3_600_000;

const flightRow = (flight: Flight, calendar: Calendar, asOf: string): DecideRow => {
  const { id, aircraft, route, date, state, needsDecision, drums, ifDeclined, pilot } = flight;
  const day = date === calendar.today ? '' : `, ${calendar.day(date)}`;
  const isNotGiven = state === 'approved' && needsDecision === null;
  const load = `${inWords(drums, 'drums')}${pilot === null ? ', no pilot yet' : `, ${pilot}`}.`;
  return {
    key: id,
    time: calendar.when(flight.by),
    head: `${id}, ${aircraft} ${route.slice(0, -1).join('-')}${day}`,
    state: isNotGiven
      ? `Approved, not given, ${ageWords(flight.by, asOf)} late`
      : `${capital(state)}${lateWords(flight, asOf)}`,
    needsDecision: needsDecision !== null,
    words: `${withoutName(needsDecision, id) ?? load} ${isNotGiven ? 'Give it, move it, or call it off. If it does not fly' : 'If declined'}: ${inShort(ifDeclined)}`,
    act: { kind: 'open', label: 'Open flight', path: `/week/${id}` },
    canReplan: needsDecision !== null,
  };
};

/** "X2, C1 XALD-XCIN-XMER, Tue 15": it flies anyway, and cannot as it is booked. */
const bookedRow = (
  { id, aircraft, route, date, purpose, passengers, needsDecision, by }: Morning['booked'][number],
  calendar: Calendar,
): DecideRow => {
  const day = date === calendar.today ? '' : `, ${calendar.day(date)}`;
  const people = passengers === 0 ? '' : `, ${inWords(passengers, 'passengers')}`;
  return {
    key: `booked ${id}`,
    time: calendar.when(by),
    head: `${id}, ${aircraft} ${route.slice(0, -1).join('-')}${day}`,
    state: 'Booked',
    needsDecision: true,
    words: `${withoutName(needsDecision, id) ?? ''} It is booked: ${purpose}${people}. Tell whoever booked it.`,
    act: { kind: 'open', label: 'Open flight', path: `/week/${id}` },
    canReplan: false,
  };
};

/** "J27-041: 9 to call, 0 called". */
const callsRow = (
  { hold, of, reason, by, at, drums, toCall, called }: Morning['openCalls'][number],
  calendar: Calendar,
): DecideRow => {
  const [name, path] =
    'batch' in of
      ? [of.batch, `?act=hold&batch=${encodeURIComponent(of.batch)}`]
      : [`Drum ${of.drum}`, `/${encodeURIComponent(of.drum)}?act=hold`];
  return {
    key: `calls ${hold}`,
    time: calendar.when(at),
    head: `${name}: ${toCall.length} to call, ${called} called`,
    state: 'HOLD',
    needsDecision: false,
    words: `${inWords(drums, 'drums')} held by ${by}: ${reason}. To call by radio: ${toCall.join(', ')}.`,
    act: { kind: 'open', label: 'Open hold', path: `/drums${path}` },
    canReplan: false,
  };
};

/** "F001, A1 XMER-XLOR, Mon 14, 07:00: did it fly?" */
const unheardRow = (
  { id, aircraft, route, date, departs, state, pilot, drums }: Unheard,
  calendar: Calendar,
): DecideRow => {
  const head = `${id}, ${aircraft} ${route.slice(0, -1).join('-')}, ${calendar.day(date)} ${departs}`;
  const load = `${inWords(drums, 'drums')}${pilot === null ? '' : `, ${pilot}`}.`;
  const isOffered = state === 'offered';
  return {
    key: `unheard ${id}`,
    time: `${calendar.day(date)} ${departs}`,
    head: isOffered ? `${head}: its day is over` : `${head}: did it fly?`,
    state: capital(state),
    needsDecision: false,
    words: isOffered
      ? `${load} It was never approved. Decline it, or amend its day.`
      : `${load} Nothing was heard of it: its drums are set aside still, and the plan counts on none of them. Enter what its crew says, or call it off.`,
    act: { kind: 'open', label: 'Open flight', path: `/week/${id}?from=${date}` },
    canReplan: false,
  };
};

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/** ", late by 23 min": the latest time to decide it is past; empty: it is not. */
const lateWords = ({ by }: Flight, asOf: string): string =>
  Date.parse(by) < Date.parse(asOf) ? `, late by ${ageWords(by, asOf)}` : '';

/** The worst cache; the card of the flight has them all. */
const inShort = (ifDeclined: string): string => {
  const [worst = '', ...others] = ifDeclined.split(/ (?=Without it )/);
  const more =
    others.length === 0
      ? ''
      : others.length === 1
        ? ' And one cache more.'
        : ` And ${others.length} caches more.`;
  return worst.replace(/^Without it /, '') + more;
};

/** A mark names its flight, day and leg first; they stand in the head already. */
const withoutName = (mark: string | null, id: string): string | undefined =>
  mark?.replace(new RegExp(`^${id}, [^:]*: `), '');

const dayRow = (flights: readonly Flight[], calendar: Calendar): DecideRow => {
  const [first] = flights;
  const many = flights.length === 1 ? 'One flight' : `${flights.length} flights`;
  return {
    key: `day ${first!.date}`,
    time: calendar.when(first!.by),
    head: `${many} to approve for ${calendar.day(first!.date)}`,
    state: 'Offered',
    needsDecision: false,
    words: `${flights.map(({ id, route }) => `${id} ${route.slice(0, -1).join('-')}`).join(', ')}.`,
    act: { kind: 'open', label: 'Open first', path: `/week/${first!.id}` },
    canReplan: false,
  };
};

const caseRow = (open: Morning['cases'][number], calendar: Calendar): DecideRow => {
  const { place, countedLitres, bookLitres, toleranceLitres, at, countedBy, proposed } = open;
  const difference = countedLitres - bookLitres;
  const waits = proposed > 0 ? ' A way of closing it waits for a second person.' : '';
  return {
    key: open.count,
    time: calendar.when(at),
    head: `${place} count`,
    state: `${figure(Math.abs(difference))} L ${difference < 0 ? 'short' : 'more'}, ${figure(toleranceLitres)} L allowed`,
    needsDecision: false,
    words: `Book ${figure(bookLitres)} L, count ${figure(countedLitres)} L by ${countedBy.join(', ')}. The plan uses ${figure(Math.min(bookLitres, countedLitres))} L. Someone else must close it.${waits}`,
    act: { kind: 'open', label: 'Open cache', path: `/caches/${place}` },
    canReplan: false,
  };
};

const proposalRow = (open: Morning['proposals'][number], calendar: Calendar): DecideRow => ({
  key: open.id,
  time: calendar.when(open.proposedAt),
  head: open.subject,
  state: stillToSignWords(open.stillToSign),
  needsDecision: false,
  words: open.signedBy.length === 0 ? 'Not signed yet.' : `Signed by ${open.signedBy.join(', ')}.`,
  act: { kind: 'agree', proposal: open.id, mayAgree: open.mayAgree },
  canReplan: false,
});
