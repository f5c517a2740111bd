import { daylight, type Place } from '@drumline/network';
import { type ClockTime, clockTimeAt, type IsoDate, minutes, minutesOfDay } from '@drumline/units';
import type { Fault } from '../flight-plan.js';
import { departureWindow } from '../flights/departure-window.js';
import { scheduleDay } from '../flights/schedule-day.js';
import { groupBy } from '../group-by.js';
import { dayWords, listWords } from '../wording.js';
import { flightFault } from './fault.js';
import type { Survey, SurveyedFlight } from './survey.js';

/**
 * Aircraft present and where the flight starts, one flight at a time for aircraft and pilot, and every take-off and
 * landing within the flying day and the daylight of its place. Days without times are asked for some order that fits.
 */
export function checkTimes(survey: Survey): readonly Fault[] {
  const inPlan = survey.flights.filter((flown) => flown.day >= 1 && flown.day <= survey.scenario.days);
  return [
    ...inPlan.filter((flown) => !flown.isFact).flatMap((flown) => absences(flown)),
    ...whereabouts(survey, inPlan),
    ...[...groupBy(inPlan, (flown) => flown.flight.date)].flatMap(([date, today]) =>
      dayTimes(survey, date, today),
    ),
  ];
}

function absences(flown: SurveyedFlight): readonly Fault[] {
  const { aircraft, flight } = flown;
  const away = aircraft.absences.find(({ from, until }) => from <= flight.date && flight.date <= until);
  if (!away) return [];
  const mend = `Use another aircraft, or fly after ${dayWords(away.until)}.`;
  return [flightFault(flown, null, `${aircraft.tail} is away: ${away.reason}.`, mend)];
}

/** An aircraft's flights, in order, must start where the one before ended. */
function whereabouts({ scenario }: Survey, flights: readonly SurveyedFlight[]): readonly Fault[] {
  const ordered = [...flights].sort(
    (one, other) => one.day - other.day || timeOf(one).localeCompare(timeOf(other)),
  );
  const ids = new Map(scenario.aircraft.map((aircraft) => [aircraft.tail, aircraft.home]));
  const waiting = groupBy(ordered, (flown) => `${flown.aircraft.tail} ${flown.day}`);
  return [...waiting.values()].flatMap((today) => {
    const left = [...today];
    while (left.length > 0) {
      const at = ids.get(left[0]!.aircraft.tail)!;
      const next = left.findIndex((flown) => startOf(flown) === at);
      if (next < 0) {
        const stuck = left[0]!;
        const what = `${stuck.aircraft.tail} stands at ${at}; this flight starts at ${startOf(stuck)}.`;
        return [
          flightFault(
            stuck,
            null,
            what,
            `Start it at ${at}, or use an aircraft that stands at ${startOf(stuck)}.`,
          ),
        ];
      }
      ids.set(left[0]!.aircraft.tail, endOf(left.splice(next, 1)[0]!));
    }
    return [];
  });
}

const timeOf = (flown: SurveyedFlight): ClockTime => flown.flight.departs ?? '99:99';
const startOf = (flown: SurveyedFlight): string => flown.legs[0]!.from.code;
const endOf = (flown: SurveyedFlight): string => flown.legs.at(-1)!.to.code;

function dayTimes(survey: Survey, date: IsoDate, today: readonly SurveyedFlight[]): readonly Fault[] {
  const timed = today.filter((flown) => flown.flight.departs !== undefined);
  const atOnce = overlaps(timed);
  const faults = [...timed.flatMap((flown) => outsideTheDay(survey, flown)), ...atOnce];
  if (timed.length === today.length) return faults;
  // Flights that are told to fly at once are why the day has no schedule.
  const isTold = ({ flights }: Fault) =>
    atOnce.some((told) => told.flights.every((id) => flights.includes(id)));
  return [...faults, ...noOrder(survey, date, today).filter((fault) => !isTold(fault))];
}

/** Follows a flight from take-off to landing and finds the first that is too early, too late or dark. */
function outsideTheDay(survey: Survey, flown: SurveyedFlight): readonly Fault[] {
  // The time of a booked flight is given with the booking: drums on it do not make it late.
  if (flown.isFact || flown.booked?.departs !== undefined) return [];
  const { flyingDay } = survey.scenario.policy;
  let at: number = minutesOfDay(flown.flight.departs!);
  if (at < minutesOfDay(flyingDay.firstDeparture))
    return [
      flightFault(
        flown,
        null,
        `It departs at ${flown.flight.departs}; the first departure is at ${flyingDay.firstDeparture}.`,
        'Depart later.',
      ),
    ];
  for (const leg of flown.legs) {
    const dark = inTheDark(survey, leg.from, flown.flight.date, at, false);
    if (dark)
      return [flightFault(flown, leg, `Take-off at ${clock(at)} ${dark}.`, 'Depart later or another day.')];
    at += leg.blockHours * 60;
    const late = inTheDark(survey, leg.to, flown.flight.date, at, true);
    if (late)
      return [
        flightFault(flown, leg, `Landing at ${clock(at)} ${late}.`, 'Depart earlier, or fly it another day.'),
      ];
    if (at > minutesOfDay(flyingDay.lastLanding) + noise)
      return [
        flightFault(
          flown,
          leg,
          `Landing at ${clock(at)}; the last landing is at ${flyingDay.lastLanding}.`,
          'Depart earlier, or fly it another day.',
        ),
      ];
    at += flown.type.turnRoundMinutes;
  }
  return [];
}

/** Minutes; a departure printed in whole minutes is never early by more than nothing. */
const noise = 1e-6;

function inTheDark(
  { scenario }: Survey,
  place: Place,
  date: IsoDate,
  at: number,
  landing: boolean,
): string | null {
  const light = daylight(place, date, scenario.timeZone);
  if (!light) return `is without daylight at ${place.code}`;
  const margin = landing ? scenario.policy.flyingDay.daylightMarginMinutes : 0;
  if (at < light.from - noise) return `is before sunrise at ${place.code}, ${clock(light.from)}`;
  if (light.until < 1440 && at > light.until - margin + noise)
    return `is later than ${margin} min before sunset at ${place.code}, ${clock(light.until)}`;
  return null;
}

const clock = (at: number): ClockTime => clockTimeAt(minutes(Math.min(1439, Math.max(0, at))));

function overlaps(timed: readonly SurveyedFlight[]): readonly Fault[] {
  const starts = timed.map((flown) => minutesOfDay(flown.flight.departs!));
  return timed.flatMap((one, index) =>
    timed.slice(index + 1).flatMap((other, offset) => {
      const shared = sharedBy(one, other);
      const otherStart = starts[index + 1 + offset]!;
      const apart =
        starts[index]! + one.heldHours * 60 <= otherStart + noise ||
        otherStart + other.heldHours * 60 <= starts[index]! + noise;
      if (!shared || apart || (one.isFact && other.isFact)) return [];
      return [
        {
          where: `${one.flight.id} and ${other.flight.id}, ${dayWords(one.flight.date)}`,
          what: `${shared} would fly both at once: ${one.flight.id} departs at ${one.flight.departs} and takes ${Math.round(one.heldHours * 60)} min, ${other.flight.id} departs at ${other.flight.departs}.`,
          mend: 'Let one depart when the other is back, or use another aircraft or pilot.',
          flights: [one.flight.id, other.flight.id],
        },
      ];
    }),
  );
}

function sharedBy(one: SurveyedFlight, other: SurveyedFlight): string | null {
  if (one.aircraft.tail === other.aircraft.tail) return one.aircraft.tail;
  return one.flight.pilot !== undefined && one.flight.pilot === other.flight.pilot ? one.flight.pilot : null;
}

function noOrder(survey: Survey, date: IsoDate, today: readonly SurveyedFlight[]): readonly Fault[] {
  const { clashes } = scheduleDay(
    today
      .filter((flown) => !flown.isFact)
      .map((flown) => ({
        id: flown.flight.id,
        aircraft: flown.aircraft.tail,
        pilot: flown.flight.pilot ?? null,
        ...departureWindow(survey.scenario, {
          date,
          legs: flown.legs,
          turnRoundMinutes: flown.type.turnRoundMinutes,
          hasLeft: flown.isFact,
          ...(flown.flight.departs && { departs: flown.flight.departs }),
        }),
        heldMinutes: flown.heldHours * 60,
        urgency: 0,
      })),
  );
  return clashes.map(({ flights, why }) => ({
    where: `${listWords(flights)}, ${dayWords(date)}`,
    what: `The day has no schedule: ${why}.`,
    mend: 'Move a flight to another day, aircraft or pilot.',
    flights,
  }));
}
