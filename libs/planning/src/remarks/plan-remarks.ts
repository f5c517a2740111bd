import { kilogramsPerLitre, print, printNumber } from '@drumline/units';
import type { Risk } from '../flight-plan.js';
import type { DescribedFlights } from '../flights/describe-flights.js';
import type { Scenario } from '../scenario.js';
import { drumWords, listWords } from '../wording.js';
import { peopleRemarks } from './people-remarks.js';
import { stockRemarks } from './stock-remarks.js';
import { stripRemarks } from './strip-remarks.js';
import { windRemark } from './wind-remark.js';

/** Assumptions and facts that were not used, in plain sentences. */
export function planRemarks(
  scenario: Scenario,
  described: DescribedFlights,
  risk: Risk | null,
): readonly string[] {
  return [
    windRemark(described),
    fuelRemark(scenario),
    drumRemark(scenario),
    ...stripRemarks(scenario),
    ...peopleRemarks(scenario),
    ...stockRemarks(scenario, described),
    ...balanceRemarks(scenario, described),
    ...riskRemarks(risk, described),
  ];
}

function fuelRemark({ policy }: Scenario): string {
  const { contingencyPercent, finalReserveMinutes, roundUpToLb, reference } = policy.fuel;
  return `Ramp fuel: contingency ${printNumber(contingencyPercent)} % of the trip, final reserve ${print(finalReserveMinutes, 'min')}, up to the next ${print(roundUpToLb, 'lb')} (${reference}).`;
}

function drumRemark({ policy }: Scenario): string {
  const { grossKg, fillLitres } = policy.drum;
  const gross = print(grossKg, 'kg', Number.isInteger(grossKg) ? 0 : 1);
  const density = print(kilogramsPerLitre(policy.bookDensityKgPerLitre), 'kg/L', 3);
  return `Every drum is planned at ${gross} and ${print(fillLitres, 'L')}; own fuel in litres at ${density}.`;
}

function balanceRemarks(scenario: Scenario, { flights }: DescribedFlights): readonly string[] {
  const used = new Set(flights.filter(({ drums }) => drums > 0).map(({ type }) => type));
  const noTip = scenario.aircraftTypes.filter(({ id, tipArmIn }) => used.has(id) && tipArmIn === null);
  const unplaced = flights.filter(
    ({ drums, legs }) =>
      drums > 0 && legs.some(({ drumsAboard, positions }) => drumsAboard > 0 && positions.length === 0),
  );
  return [
    ...(noTip.length > 0
      ? [`Tip arm not published, tail-tipping not checked: type ${listWords(noTip.map(({ id }) => id))}.`]
      : []),
    ...unplaced.map(
      ({ id }) => `${id}: positions of the drums are not worked out (no place is given for its freight).`,
    ),
  ];
}

function riskRemarks(risk: Risk | null, { flights }: DescribedFlights): readonly string[] {
  if (risk === null) return [];
  const drums = flights.reduce((sum, flight) => sum + flight.drums, 0);
  return [
    `Weather: in ${printNumber(risk.belowCritical * 100, 1)} % of ${printNumber(risk.fortnights)} drawn runs of the weather (seed ${risk.seed}) a cache ends a day below critical; ${printNumber(risk.expectedDrums, 1)} of ${drumWords(drums)} are expected to land.`,
  ];
}
