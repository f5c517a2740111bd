import type { HazardNotice } from '@drumline/network';
import type { Fault } from '../flight-plan.js';
import { dayWords } from '../wording.js';
import { flightFault } from './fault.js';
import type { FlownLeg } from './recompute-legs.js';
import type { Survey, SurveyedFlight } from './survey.js';

/** Days without flying, closed strips and legs, strips closed when soft, and types not approved for a place. */
export function checkPlaces(survey: Survey): readonly Fault[] {
  return survey.flights
    .filter((flown) => !flown.isFact)
    .flatMap((flown) => [
      ...flyingDay(survey, flown),
      ...flown.legs.flatMap((leg) => [...notices(survey, flown, leg), ...landing(survey, flown, leg)]),
    ]);
}

function flyingDay({ scenario }: Survey, flown: SurveyedFlight): readonly Fault[] {
  const { date } = flown.flight;
  if (flown.day < 1 || flown.day > scenario.days)
    return [
      flightFault(flown, null, `${dayWords(date)} is not a day of the plan.`, 'Choose a day of the plan.'),
    ];
  if (!scenario.noFlyingDays.includes(date)) return [];
  return [flightFault(flown, null, `${dayWords(date)} is a day without flying.`, 'Fly it on another day.')];
}

function notices(survey: Survey, flown: SurveyedFlight, leg: FlownLeg): readonly Fault[] {
  const notice = survey.closures.ofLeg(leg.from, leg.to, flown.flight.date);
  return notice ? [flightFault(flown, leg, closedBy(notice), 'Fly another day or another way.')] : [];
}

const closedBy = (notice: HazardNotice): string =>
  `The leg is closed by notice ${notice.id} (${notice.source}): ${notice.text}`;

function landing(survey: Survey, flown: SurveyedFlight, leg: FlownLeg): readonly Fault[] {
  const { type } = flown;
  const place = leg.to.code;
  const line = survey.stripLimit(place, type.id);
  const fault = (what: string, mend: string) => [flightFault(flown, place, what, mend)];
  if (line === null)
    return fault(`Type ${type.id} is not approved at ${place}.`, 'Send a type that is approved there.');
  if (leg.surfaceTo === 'closed')
    return fault(`${place} is reported closed.`, 'Wait for a report that it is open.');
  if (leg.surfaceTo === 'soft' && line.whenSoft === 'closed')
    return fault(
      `${place} is soft, and when soft it is closed to type ${type.id}.`,
      'Wait until it is dry, or send another type.',
    );
  return [];
}
