import { daysBetween, daysFrom, hours, type IsoDate, print } from '@drumline/units';
import type { Fault } from '../flight-plan.js';
import { groupBy } from '../group-by.js';
import type { Pilot } from '../scenario.js';
import { dayWords, listWords } from '../wording.js';
import { flightFault } from './fault.js';
import type { Survey, SurveyedFlight } from './survey.js';

/** Crew fit of every flight, and every pilot's hours a day and in any 7 days (conventions, "Crew fit", "Crew hours"). */
export function checkCrews(survey: Survey): readonly Fault[] {
  return [
    ...survey.flights.filter((flown) => !flown.isFact).flatMap((flown) => crewFit(survey, flown)),
    ...crewHours(survey),
  ];
}

function crewFit(survey: Survey, flown: SurveyedFlight): readonly Fault[] {
  const { pilots } = survey.scenario;
  const able = (): string => {
    const names = pilots.filter((pilot) => !unfit(survey, pilot, flown)).map((pilot) => pilot.id);
    return names.length > 0
      ? `Give it to ${names.join(' or ')}.`
      : 'No pilot may fly it that day: choose another day or type.';
  };
  if (flown.flight.pilot !== undefined) {
    const why = unfit(survey, survey.pilot(flown.flight.pilot), flown);
    return why ? [flightFault(flown, null, why, able())] : [];
  }
  if (pilots.some((pilot) => !unfit(survey, pilot, flown))) return [];
  const whys = pilots
    .filter((pilot) => pilot.types.includes(flown.type.id))
    .map((pilot) => unfit(survey, pilot, flown)!);
  const what = `No pilot may fly it. ${whys.join(' ') || `Nobody is rated for type ${flown.type.id}.`}`;
  return [
    flightFault(
      flown,
      null,
      what,
      'Choose another day or type, or renew a landing there with a check flight.',
    ),
  ];
}

function unfit(survey: Survey, pilot: Pilot, flown: SurveyedFlight): string | null {
  const { date } = flown.flight;
  if (!pilot.types.includes(flown.type.id)) return `${pilot.id} is not rated for type ${flown.type.id}.`;
  if (pilot.daysOff.includes(date)) return `${pilot.id} is off on ${dayWords(date)}.`;
  const landings = flown.legs.map((leg) => leg.to);
  const beyond = landings.find(
    (place) => place.stripClass !== null && !pilot.stripClasses.includes(place.stripClass),
  );
  if (beyond) return `${pilot.id} is not cleared for ${beyond.code} (class ${beyond.stripClass}).`;
  for (const place of landings) {
    const rule = survey.scenario.policy.crew.recencyDays.find((line) => line.stripClass === place.stripClass);
    const why = rule ? stale(pilot, place.code, rule.days, date) : null;
    if (why) return why;
  }
  return null;
}

function stale(pilot: Pilot, place: string, allowed: number, date: IsoDate): string | null {
  const ages = pilot.lastLandings
    .filter((landing) => landing.place === place)
    .map((landing) => daysBetween(landing.date, date))
    .filter((age) => age >= 0);
  if (ages.length === 0) return `${pilot.id} has no recorded landing at ${place}.`;
  const age = Math.min(...ages);
  if (age <= allowed) return null;
  return `${pilot.id} last landed at ${place} ${age} days before; ${allowed} are allowed.`;
}

const noise = 1e-9;

function crewHours(survey: Survey): readonly Fault[] {
  const byPilot = groupBy(
    survey.flights.filter((flown) => flown.flight.pilot !== undefined),
    (flown) => flown.flight.pilot!,
  );
  return [...byPilot].flatMap(([id, flights]) => {
    const pilot = survey.pilot(id);
    return [...dailyHours(survey, pilot, flights), ...rollingHours(survey, pilot, flights)];
  });
}

function dailyHours(
  { scenario }: Survey,
  pilot: Pilot,
  flights: readonly SurveyedFlight[],
): readonly Fault[] {
  const { crew } = scenario.policy;
  return [...groupBy(flights, (flown) => flown.flight.date)].flatMap(([date, today]) => {
    const flown = total(today, (flight) => flight.blockHours);
    const duty = total(today, (flight) => flight.dutyHours);
    return [
      ...over(pilot, dayWords(date), 'of flight', flown, crew.flightHoursPerDay, today),
      ...over(pilot, dayWords(date), 'of duty', duty, crew.dutyHoursPerDay, today),
    ];
  });
}

function rollingHours(
  { scenario }: Survey,
  pilot: Pilot,
  flights: readonly SurveyedFlight[],
): readonly Fault[] {
  const { crew } = scenario.policy;
  for (const last of daysFrom(scenario.firstDay, scenario.days)) {
    const within = (date: IsoDate): boolean => daysBetween(date, last) >= 0 && daysBetween(date, last) < 7;
    const inWindow = flights.filter((flown) => within(flown.flight.date));
    const before = pilot.flown.filter((day) => within(day.date) && day.date < scenario.firstDay);
    const flown =
      total(inWindow, (flight) => flight.blockHours) + before.reduce((sum, day) => sum + day.blockHours, 0);
    const fault = over(
      pilot,
      `the 7 days to ${dayWords(last)}`,
      'of flight',
      flown,
      crew.flightHoursPer7Days,
      inWindow,
    );
    if (fault.length > 0) return fault;
  }
  return [];
}

const total = (flights: readonly SurveyedFlight[], of: (flight: SurveyedFlight) => number): number =>
  flights.reduce((sum, flight) => sum + of(flight), 0);

function over(
  pilot: Pilot,
  when: string,
  kind: string,
  has: number,
  allowed: number,
  flights: readonly SurveyedFlight[],
): readonly Fault[] {
  if (has <= allowed + noise || flights.every((flown) => flown.isFact)) return [];
  const ids = flights.map((flown) => flown.flight.id);
  return [
    {
      where: `${pilot.id}, ${when}`,
      what: `${pilot.id} would have ${print(hours(has), 'h', 2)} ${kind} with ${listWords(ids)}; ${print(hours(allowed), 'h', 2)} are allowed.`,
      mend: `Give ${print(hours(has - allowed), 'h', 2)} of it to another pilot or day.`,
      flights: ids,
    },
  ];
}
