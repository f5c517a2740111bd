import { type Kilograms, type Pounds, pounds, poundsFromKilograms } from '@drumline/units';
import type { FlightFuel } from './cabin.js';

/** Rounding noise in lb, which is no weight. */
const noise = 1e-6;

/** Whole pounds, as a sheet prints them. */
export const printedLb = (weightLb: Pounds): Pounds => pounds(Math.round(weightLb));

/** Kilograms as whole pounds: every drum is rounded by itself, and the rounded figures are added. */
export const printedLbOf = (weightKg: Kilograms): Pounds => printedLb(poundsFromKilograms(weightKg));

/**
 * Room under a limit as it is told: of the printed sum; where the exact one is over and the printed one is not, 1 lb
 * over is told. Negative: over.
 */
export const printedSpareLb = (limitLb: Pounds, printedSumLb: Pounds, exactLb: number): Pounds => {
  const spareLb = limitLb - printedSumLb;
  return pounds(exactLb > limitLb + noise ? Math.min(-1, spareLb) : spareLb);
};

/** What is rounded on a sheet before it is added. */
export interface PrintedRequest {
  readonly operatingWeightLb: Pounds;
  readonly taxiFuelLb: Pounds;
  readonly fuel: FlightFuel;
  /** By leg: the weight of each row of the load that is aboard. */
  readonly rowsByLeg: readonly (readonly Pounds[])[];
}

/** The weights of one leg in whole pounds; each follows from those above it as a hand would add them. */
export interface PrintedLeg {
  readonly from: string;
  readonly to: string;
  readonly operatingLb: Pounds;
  readonly loadLb: Pounds;
  readonly zeroFuelLb: Pounds;
  /** At start-up on the first leg; on a later one what is left on arrival and the uplift there. */
  readonly fuelLb: Pounds;
  /** Part of `fuelLb` that is taken where the leg begins; 0 on the first leg. */
  readonly upliftLb: Pounds;
  /** 0 on later legs: taxi is burned once. */
  readonly taxiLb: Pounds;
  readonly takeoffLb: Pounds;
  readonly tripLb: Pounds;
  readonly landingLb: Pounds;
  readonly fuelAtLandingLb: Pounds;
}

/**
 * The sums of a load sheet: every row and every fuel figure is rounded to whole pounds first and the rounded ones are
 * added, so that a person who adds the printed column gets the printed total. Rule "Printed sums" of the conventions.
 */
export function printedLegs({
  operatingWeightLb,
  taxiFuelLb,
  fuel,
  rowsByLeg,
}: PrintedRequest): PrintedLeg[] {
  const operating = Math.round(operatingWeightLb);
  let arrivedWith = 0;
  return fuel.legs.map((leg, index) => {
    const load = rowsByLeg[index]!.reduce((sum, row) => sum + Math.round(row), 0);
    const first = index === 0;
    const exactUplift = first ? 0 : leg.fuelAtTakeoffLb - fuel.legs[index - 1]!.fuelAtLandingLb;
    const uplift = exactUplift > noise ? Math.round(leg.fuelAtTakeoffLb) - arrivedWith : 0;
    const fuelLb = first ? Math.round(fuel.rampFuelLb) : arrivedWith + uplift;
    const taxi = first ? Math.round(taxiFuelLb) : 0;
    const trip = Math.round(leg.fuelAtTakeoffLb - leg.fuelAtLandingLb);
    const zeroFuel = operating + load;
    arrivedWith = fuelLb - taxi - trip;
    return {
      from: leg.from,
      to: leg.to,
      operatingLb: pounds(operating),
      loadLb: pounds(load),
      zeroFuelLb: pounds(zeroFuel),
      fuelLb: pounds(fuelLb),
      upliftLb: pounds(uplift),
      taxiLb: pounds(taxi),
      takeoffLb: pounds(zeroFuel + fuelLb - taxi),
      tripLb: pounds(trip),
      landingLb: pounds(zeroFuel + arrivedWith),
      fuelAtLandingLb: pounds(arrivedWith),
    };
  });
}
