import { addDays, type Hours, hours, type IsoDate, type Litres, litres, print } from '@drumline/units';
import type { Helicopter, Scenario, SlingMove } from '../scenario.js';

/** What a sling asks of its helicopter. */
export interface SlingWork {
  readonly helicopter: string;
  /** Out with a load and back, so many times. */
  readonly lifts: number;
  /** Null: the operator has set no speed under a sling for it. */
  readonly hours: Hours | null;
  /** For these hours; in no level, as far as no task has them. */
  readonly litres: Litres | null;
}

/** Lifts by what the hook takes; hours by distance out and back at the operator's speed, with the minutes of each lift. */
export function slingWork(sling: SlingMove, scenario: Scenario): SlingWork {
  const helicopter = scenario.helicopters.find(({ id }) => id === sling.helicopter)!;
  const { drumsPerLift, slinging, fuelLitresPerHour } = helicopter;
  const lifts = Math.ceil(sling.drums / Math.max(1, drumsPerLift));
  if (slinging === undefined) return { helicopter: helicopter.id, lifts, hours: null, litres: null };
  const eachHours = (2 * sling.distanceNm) / slinging.speedKt + slinging.minutesPerLift / 60;
  const all = hours(lifts * eachHours);
  return { helicopter: helicopter.id, lifts, hours: all, litres: litres(all * fuelLitresPerHour) };
}

/** Hours of a helicopter on a day: its tasks and, on top of them, its slings. */
export function hoursOn(date: IsoDate, helicopter: string, scenario: Scenario): Hours {
  const tasks = tasksOn(date, helicopter, scenario).reduce((sum, task) => sum + task.hours, 0);
  const slings = scenario.slings
    .filter((sling) => sling.date === date && sling.helicopter === helicopter)
    .reduce((sum, sling) => sum + (slingWork(sling, scenario).hours ?? 0), 0);
  return hours(tasks + slings);
}

/**
 * Why a sling cannot fly on its day, as it stands in the scenario; null: nothing known is against it. Days without
 * flying, absences, work elsewhere, and the hours of the crew rules a day and in 7 days.
 */
export function whyNotThatDay(sling: SlingMove, scenario: Scenario): string | null {
  const { date, helicopter: id } = sling;
  const helicopter = scenario.helicopters.find((each) => each.id === id)!;
  if (scenario.noFlyingDays.includes(date)) return 'no flying that day';
  return absent(date, helicopter) ?? elsewhere(sling, scenario) ?? tooLong(date, id, scenario);
}

const absent = (date: IsoDate, { id, absences = [] }: Helicopter): string | null => {
  const away = absences.find(({ from, until }) => from <= date && date <= until);
  return away === undefined ? null : `${id} is away: ${away.reason}`;
};

/** A helicopter is where it works that day; without work, where it worked last. */
function elsewhere({ date, helicopter, from, to }: SlingMove, scenario: Scenario): string | null {
  const worked = scenario.helicopterTasks.filter(
    (task) => task.helicopter === helicopter && task.date <= date,
  );
  const last = worked
    .map((task) => task.date)
    .sort()
    .at(-1);
  const places = worked.filter((task) => task.date === last).map(({ place }) => place);
  if (last === undefined || places.some((place) => place === from || place === to)) return null;
  return last === date
    ? `${helicopter} works at ${places.join(' and ')} that day`
    : `${helicopter} is at ${places.at(-1)} by then`;
}

function tooLong(date: IsoDate, helicopter: string, scenario: Scenario): string | null {
  const { flightHoursPerDay, flightHoursPer7Days, reference } = scenario.policy.crew;
  const that = hoursOn(date, helicopter, scenario);
  if (that > flightHoursPerDay)
    return `${helicopter} would fly ${print(that, 'h', 1)}, ${print(flightHoursPerDay, 'h', 1)} a day by ${reference}`;
  const weeks = Array.from({ length: 7 }, (_, back) => weekFrom(addDays(date, -back), helicopter, scenario));
  const most = hours(Math.max(...weeks));
  if (most <= flightHoursPer7Days) return null;
  return `${helicopter} would fly ${print(most, 'h', 1)} in 7 days, ${print(flightHoursPer7Days, 'h', 1)} by ${reference}`;
}

const weekFrom = (first: IsoDate, helicopter: string, scenario: Scenario): number =>
  Array.from({ length: 7 }, (_, day) => hoursOn(addDays(first, day), helicopter, scenario)).reduce(
    (sum, each) => sum + each,
    0,
  );

const tasksOn = (date: IsoDate, helicopter: string, { helicopterTasks }: Scenario) =>
  helicopterTasks.filter((task) => task.date === date && task.helicopter === helicopter);
