import { daysFrom, poundsFromKilograms } from '@drumline/units';
import type { Fault, FlightPlan, MoneyParts, PlannedFlight } from '../flight-plan.js';
import { asStandingFlight } from '../flights/as-standing-flight.js';
import type { Scenario } from '../scenario.js';
import { dayWords, litreWords, poundWords } from '../wording.js';
import { cacheLedger } from './cache-ledger.js';
import { legBalances } from './check-balance.js';
import { checkFlights } from './check-flights.js';
import { flightFault } from './fault.js';
import { type Survey, type SurveyedFlight, survey } from './survey.js';

/** What a plan says of its flights, levels and money. */
export type CheckedPlan = Pick<FlightPlan, 'flights' | 'caches' | 'cost'>;

/**
 * Every rule that a plan's flights break, and every figure of the plan that does not come out again when it is worked
 * out from the scenario: fuel, times, drums aboard, positions, money to the cent, levels to the litre. Empty: none.
 */
export function checkPlan(scenario: Scenario, plan: CheckedPlan): readonly Fault[] {
  const standing = plan.flights.map(asStandingFlight);
  const surveyed = survey(scenario, standing);
  return [
    ...checkFlights(scenario, standing),
    ...plan.flights.flatMap((flight, index) => claims(surveyed, flight, surveyed.flights[index]!)),
    ...levels(surveyed, plan),
    ...totals(plan),
  ];
}

function claims(survey: Survey, said: PlannedFlight, flown: SurveyedFlight): readonly Fault[] {
  const figures: readonly (readonly [string, number, number, number])[] = [
    ['ramp fuel, lb', said.rampFuelLb, flown.rampFuelLb, 0.01],
    ['block hours', said.blockHours, flown.blockHours, 1e-6],
    ['duty hours', said.dutyHours, flown.dutyHours, 1e-6],
    ...flown.legs.map(
      ({ from, to, drums }, leg) =>
        [
          `drums aboard ${from.code}-${to.code}`,
          said.legs[leg]?.drumsAboard ?? Number.NaN,
          drums,
          0,
        ] as const,
    ),
    ...money(survey, said, flown),
  ];
  const wrong = figures.filter(([, says, is, within]) => !(Math.abs(says - is) <= within));
  return [
    ...wrong.map(([what, says, is]) =>
      flightFault(
        flown,
        null,
        `The plan says ${what} ${says}; worked out again it is ${is}.`,
        'Report this: the plan was read wrongly.',
      ),
    ),
    ...positions(survey, said, flown),
  ];
}

function money({ scenario }: Survey, said: PlannedFlight, flown: SurveyedFlight) {
  const { drum } = scenario.policy;
  const drums = said.stops.reduce((sum, stop) => sum + stop.drums, 0);
  const price = scenario.bases.find(({ place }) => place === said.from)?.pricePerLitre ?? 0;
  const flight = flown.booked
    ? 0
    : flown.blockHours * flown.type.costPerBlockHour + flown.legs.length * flown.type.landingFee;
  // Half a cent either way is the rounding of each part.
  const within = 0.5 + 1e-6;
  return [
    ['flight cost, cents', said.cost.flight, flight, within],
    ['fuel cost, cents', said.cost.fuel, drums * drum.fillLitres * price, within],
    ['handling, cents', said.cost.handling, drums * drum.handlingCost, within],
    ['total, cents', said.cost.total, said.cost.flight + said.cost.fuel + said.cost.handling, 0],
  ] as const;
}

/** Positions that are named must bear the drums and balance, leg by leg; a flight under way is not judged. */
function positions({ scenario }: Survey, said: PlannedFlight, flown: SurveyedFlight): readonly Fault[] {
  if (flown.isFact) return [];
  const drumLb = poundsFromKilograms(scenario.policy.drum.grossKg);
  return said.legs.flatMap((leg, index) => {
    const places = flown.configuration.drumPositions.filter(({ id }) => leg.positions.includes(id));
    if (leg.positions.length === 0) return [];
    const strong = places.every(({ limitLb }) => limitLb >= drumLb);
    const fits =
      places.length === leg.drumsAboard && strong && legBalances(flown, flown.legs[index]!, places, drumLb);
    if (fits) return [];
    const what = `${leg.drumsAboard} drums of ${poundWords(drumLb)} in ${leg.positions.join(' ')} do not fit or do not balance.`;
    return [flightFault(flown, flown.legs[index]!, what, 'Place them again, or take fewer.')];
  });
}

function levels(surveyed: Survey, plan: CheckedPlan): readonly Fault[] {
  const ledger = cacheLedger(surveyed.scenario, surveyed.flights);
  const dates = daysFrom(surveyed.scenario.firstDay, surveyed.scenario.days);
  return plan.caches.flatMap(({ place, usable }) => {
    const day = dates.findIndex(
      (_, index) => !(Math.abs(usable[index + 1]! - ledger.get(place)![index]!.usable) < 0.5),
    );
    if (day < 0) return [];
    const what = `The plan says ${litreWords(usable[day + 1]!)} usable; worked out again it is ${litreWords(ledger.get(place)![day]!.usable)}.`;
    return [
      {
        where: `${place}, ${dayWords(dates[day]!)}`,
        what,
        mend: 'Report this: the levels were read wrongly.',
        flights: [],
      },
    ];
  });
}

function totals({ flights, cost }: CheckedPlan): readonly Fault[] {
  const parts: readonly (keyof Omit<MoneyParts, 'perLitre'>)[] = [
    'flight',
    'fuel',
    'handling',
    'total',
    'litres',
  ];
  return parts.flatMap((part) => {
    const added = flights.reduce((sum, flight) => sum + flight.cost[part], 0);
    if (added === cost[part]) return [];
    const what = `The plan's total of ${part} is ${cost[part]}; its flights add up to ${added}.`;
    return [{ where: 'totals', what, mend: 'Report this: the plan was added up wrongly.', flights: [] }];
  });
}
