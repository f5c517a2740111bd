import { poundsFromKilograms } from '@drumline/units';
import type { Fault } from '../flight-plan.js';
import { drumWords, poundWords } from '../wording.js';
import { flightFault } from './fault.js';
import type { FlownLeg } from './recompute-legs.js';
import type { Survey, SurveyedFlight } from './survey.js';

/** Weights of every leg against the aeroplane's and the strips' limits, the cabin's places, and passengers aboard. */
export function checkWeights(survey: Survey): readonly Fault[] {
  return survey.flights
    .filter((flown) => !flown.isFact)
    .flatMap((flown) => [
      ...fuelCapacity(flown),
      ...flown.legs.flatMap((leg) => [
        ...cabinLimits(survey, flown, leg),
        ...weightLimits(survey, flown, leg).flatMap((limit) => overLimit(survey, flown, leg, limit)),
      ]),
    ]);
}

interface WeightLimit {
  /** "BRV accepts 5,700 lb landing" */
  readonly says: string;
  /** "lands at" */
  readonly does: string;
  readonly limitLb: number;
  readonly weightLb: number;
  /** As it is told: whole pounds, row by row. */
  readonly printedLb: number;
}

function weightLimits(survey: Survey, { type }: SurveyedFlight, leg: FlownLeg): readonly WeightLimit[] {
  const { zeroFuelLb, takeoffFuelLb, landingFuelLb, printed } = leg;
  const takeoff = {
    does: 'takes off at',
    weightLb: zeroFuelLb + takeoffFuelLb,
    printedLb: printed.takeoffLb,
  };
  const landing = { does: 'lands at', weightLb: zeroFuelLb + landingFuelLb, printedLb: printed.landingLb };
  const ofType = `type ${type.id}`;
  return [
    limit(`${ofType} accepts`, 'take-off', type.maxTakeoffLb, takeoff),
    limit(`${ofType} accepts`, 'landing', type.maxLandingLb, landing),
    limit(`${ofType} accepts`, 'without fuel', type.maxZeroFuelLb, {
      does: 'weighs',
      weightLb: zeroFuelLb,
      printedLb: printed.zeroFuelLb,
    }),
    ...stripLimit(survey, type.id, leg.from.code, leg.surfaceFrom === 'soft', 'take-off', takeoff),
    ...stripLimit(survey, type.id, leg.to.code, leg.surfaceTo === 'soft', 'landing', landing),
  ];
}

type Weighed = Pick<WeightLimit, 'does' | 'weightLb' | 'printedLb'>;

const limit = (subject: string, moment: string, limitLb: number, weighed: Weighed): WeightLimit => ({
  says: `${subject} ${poundWords(limitLb)} ${moment}`,
  limitLb,
  ...weighed,
});

/** Strips closed or not approved to the type are found with the places, not here. */
function stripLimit(
  survey: Survey,
  type: string,
  place: string,
  soft: boolean,
  moment: 'take-off' | 'landing',
  weighed: Weighed,
): readonly WeightLimit[] {
  const line = survey.stripLimit(place, type);
  if (line === null || (soft && line.whenSoft === 'closed')) return [];
  const dryLb = moment === 'landing' ? line.landingLb : line.takeoffLb;
  const penalty = line.whenSoft === 'closed' ? null : line.whenSoft;
  const lessLb = (moment === 'landing' ? penalty?.landingLessLb : penalty?.takeoffLessLb) ?? 0;
  return [
    limit(`${place}${soft ? ' when soft' : ''} accepts`, moment, soft ? dryLb - lessLb : dryLb, weighed),
  ];
}

/** Rounding noise of floating point, in lb. */
const noise = 1e-6;

function overLimit(
  survey: Survey,
  flown: SurveyedFlight,
  leg: FlownLeg,
  { says, does, limitLb, weightLb, printedLb }: WeightLimit,
) {
  const over = weightLb - limitLb;
  if (over <= noise) return [];
  const { grossKg } = survey.scenario.policy.drum;
  const unload = Math.ceil(over / poundsFromKilograms(grossKg) - noise);
  const toldLb = Math.max(1, printedLb - limitLb);
  const atPlanned = leg.drums === 0 ? '' : ` at ${grossKg} kg a drum`;
  const mend =
    unload <= leg.drums
      ? `Unload ${poundWords(toldLb)} (${drumWords(unload)}).`
      : `Even without drums it is too heavy: ${poundWords(toldLb)} less fuel or freight, or another aircraft.`;
  return [flightFault(flown, leg, `${says}; this load ${does} ${poundWords(printedLb)}${atPlanned}.`, mend)];
}

function fuelCapacity(flown: SurveyedFlight): readonly Fault[] {
  const { type, rampFuelLb } = flown;
  if (rampFuelLb <= type.fuelCapacityLb) return [];
  return [
    flightFault(
      flown,
      null,
      `It needs ${poundWords(rampFuelLb)} of fuel at start-up; the tanks of type ${type.id} hold ${poundWords(type.fuelCapacityLb)}.`,
      'Plan an uplift on the way, fewer stops, or another type.',
    ),
  ];
}

/** By the approval that a booked flight cites, where it holds that day, for that leg and aircraft. */
function drumsBesidePassengers(
  { approvals = [] }: Survey['scenario'],
  { flight, booked }: SurveyedFlight,
  leg: FlownLeg,
): number {
  const cited = approvals.find(({ number }) => number === booked?.approval);
  if (cited === undefined || new Set(cited.agreedBy).size < 2) return 0;
  const { from, until, legs, aircraft, mostPassengers, mostDrums } = cited;
  const ends = [leg.from.code, leg.to.code].sort().join();
  const covers =
    from <= flight.date &&
    flight.date <= until &&
    (aircraft === null || aircraft.includes(flight.aircraft)) &&
    (legs === null || legs.some((pair) => [...pair].sort().join() === ends)) &&
    (mostPassengers === null || leg.passengers <= mostPassengers);
  return covers ? (mostDrums ?? Number.POSITIVE_INFINITY) : 0;
}

function cabinLimits({ scenario }: Survey, flown: SurveyedFlight, leg: FlownLeg): readonly Fault[] {
  if (leg.drums === 0) return [];
  if (leg.passengers > 0 && leg.drums > drumsBesidePassengers(scenario, flown, leg)) {
    const what = `${leg.passengers} passengers and ${drumWords(leg.drums)} are aboard together.`;
    return [flightFault(flown, leg, what, `Take the drums off: ${scenario.policy.passengers.reference}.`)];
  }
  const drumLb = poundsFromKilograms(scenario.policy.drum.grossKg);
  const places = flown.configuration.drumPositions;
  const strong = places.filter((place) => place.limitLb >= drumLb).length;
  if (leg.drums <= strong) return [];
  const weak = strong < places.length ? `, of which ${strong} bear a drum of ${poundWords(drumLb)}` : '';
  return [
    flightFault(
      flown,
      leg,
      `${drumWords(leg.drums)} are aboard; ${flown.configuration.name} has ${places.length} places for drums${weak}.`,
      `Unload ${drumWords(leg.drums - strong)}.`,
    ),
  ];
}
