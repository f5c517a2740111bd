import { daylight } from '@drumline/network';
import { addDays, type ClockTime, clockTimeAt, localDate, minutes, minutesOfDay } from '@drumline/units';
import type { Fault } from '../flight-plan.js';
import { isAbsent } from '../problem/vehicles.js';
import { whyNot } from '../reasons/why-not.js';
import type { Scenario } from '../scenario.js';

/**
 * Why no aeroplane can bring a single drum to a strip on any day of the horizon, though it flew nothing else, in words
 * that follow "Blocked by:"; null: one can. The rules are asked by the code that judges a plan.
 */
export function noFlightWords(scenario: Scenario, place: string): string | null {
  if (scenario.aircraft.length === 0) return 'no aeroplane is named: add one, with its home base.';
  const days = daysAhead(scenario);
  const tries = scenario.aircraft.flatMap((aircraft) =>
    days.flatMap((date) => (isAbsent(aircraft, date) ? [] : [{ aircraft, date }])),
  );
  if (tries.length === 0) return 'every aeroplane is away on every day that is left.';
  const faults: Fault[] = [];
  for (const { aircraft, date } of tries) {
    const question = { aircraft: aircraft.tail, date, stops: [{ place, drums: 1 }] };
    const answer = whyNot(withoutFlights(scenario), [], question, 'minimum');
    if (answer.verdict === 'allowed') return null;
    faults.push(answer.fault);
  }
  const { aircraft, date } = tries[0]!;
  const { what, mend } = commonest(faults);
  return (
    lightWords(scenario, aircraft.home, date) ??
    `no aeroplane may fly there on ${tries.length === 1 ? 'the day that is left' : 'any day'}. ${what} ${mend}`
  );
}

const withoutFlights = (scenario: Scenario): Scenario => ({ ...scenario, flights: [], bookedFlights: [] });

function daysAhead({ asOf, timeZone, firstDay, days }: Scenario): readonly string[] {
  const today = localDate(asOf, timeZone);
  return Array.from({ length: days }, (_, day) => addDays(firstDay, day)).filter((date) => date >= today);
}

/** Null: at the base it is light for half of the flying day or more. */
function lightWords({ places, policy, timeZone }: Scenario, home: string, date: string): string | null {
  const { firstDeparture, lastLanding } = policy.flyingDay;
  const [first, last] = [minutesOfDay(firstDeparture), minutesOfDay(lastLanding)];
  const light = daylight(places.find(({ code }) => code === home)!, date, timeZone);
  if (light !== null && Math.min(last, light.until) - Math.max(first, light.from) >= (last - first) / 2)
    return null;
  const sun =
    light === null
      ? `the sun stays down at ${home}`
      : `at ${home} it is light from ${clock(light.from)} to ${clock(light.until)}`;
  return (
    `too little daylight in the hours of flying, ${firstDeparture} to ${lastLanding}: by ${timeZone} ${sun}. ` +
    'Look at the time zone and at the longitudes of the places.'
  );
}

const clock = (at: number): ClockTime => clockTimeAt(minutes(((at % 1440) + 1440) % 1440));

/** What stands in the way on most days. */
function commonest(faults: readonly Fault[]): Fault {
  const count = ({ what }: Fault): number => faults.filter((other) => other.what === what).length;
  return faults.toSorted((one, other) => count(other) - count(one))[0]!;
}
