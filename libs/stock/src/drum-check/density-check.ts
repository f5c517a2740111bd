import {
  type Celsius,
  densityAt15From,
  isJetFuelDensity,
  type Kilograms,
  type KilogramsPerLitre,
  kilogramsPerLitre,
  type Litres,
  print,
  printNumber,
} from '@drumline/units';

/** A drum weighed and dipped at one temperature. */
export interface DrumMeasured {
  readonly grossKg: Kilograms;
  readonly tareKg: Kilograms;
  readonly dipLitres: Litres;
  readonly temperature: Celsius;
}

/** What the operator accepts, and how well scale and stick can tell. */
export interface DensityTolerance {
  /** Of the batch's density at 15 °C. */
  readonly percent: number;
  readonly scaleErrorKg: Kilograms;
  readonly dipErrorLitres: Litres;
  readonly reference: string;
}

/** The density that weight and dip imply, against the batch's. A suspect drum is not to be used until somebody finds out why. */
export interface DensityCheck {
  /** Null: no fuel has such a density, or no litres were dipped. */
  readonly impliedAt15: KilogramsPerLitre | null;
  /** Over the batch's density; negative: under it. Null with `impliedAt15`. */
  readonly differencePercent: number | null;
  /** What the scale alone, and the stick alone, may make of the difference. */
  readonly fromScalePercent: number;
  readonly fromDipPercent: number;
  readonly suspect: boolean;
  readonly words: string;
}

/**
 * Density at 15 °C implied by gross weight, tare and dip, corrected from the measured temperature by table 54B, against
 * the density of the drum's own batch. Suspect when it differs by more than the operator's tolerance, or lies outside
 * the range of jet fuel (0.775 to 0.840 kg/L): water, another fuel, a wrong tare, a wrong number or a theft.
 */
export function checkDensity(
  measured: DrumMeasured,
  batchDensityAt15: KilogramsPerLitre,
  tolerance: DensityTolerance,
): DensityCheck {
  const netKg = measured.grossKg - measured.tareKg;
  const fromScalePercent = netKg > 0 ? (tolerance.scaleErrorKg / netKg) * 100 : 0;
  const fromDipPercent = measured.dipLitres > 0 ? (tolerance.dipErrorLitres / measured.dipLitres) * 100 : 0;
  const impliedAt15 = impliedDensity(netKg, measured);
  if (impliedAt15 === null)
    return {
      impliedAt15,
      differencePercent: null,
      fromScalePercent,
      fromDipPercent,
      suspect: true,
      words: `Suspect: ${printNumber(netKg, 1)} kg net in ${print(measured.dipLitres, 'L')} is no fuel. Weigh and dip again.`,
    };
  const differencePercent = (impliedAt15 / batchDensityAt15 - 1) * 100;
  // What is just the tolerance is accepted; the last digits of a division are no fuel.
  const apart = Math.abs(differencePercent) > tolerance.percent + 1e-9;
  const strange = !isJetFuelDensity(impliedAt15);
  const why = [
    ...(apart ? [`over the ${tolerance.percent} % of ${tolerance.reference}`] : []),
    ...(strange ? ['outside 0.775 to 0.840 kg/L of jet fuel'] : []),
  ];
  const figures = `${print(impliedAt15, 'kg/L', 3)} at 15 °C against ${print(batchDensityAt15, 'kg/L', 3)} of its batch, ${printNumber(Math.abs(differencePercent), 1)} % ${differencePercent < 0 ? 'lighter' : 'heavier'}`;
  const errors = `Scale ±${print(tolerance.scaleErrorKg, 'kg', 1)} is ${printNumber(fromScalePercent, 1)} %, dip ±${print(tolerance.dipErrorLitres, 'L', 1)} is ${printNumber(fromDipPercent, 1)} %.`;
  return {
    impliedAt15,
    differencePercent,
    fromScalePercent,
    fromDipPercent,
    suspect: why.length > 0,
    words:
      why.length > 0
        ? `Suspect: ${figures}: ${why.join(', ')}. ${errors}`
        : `As its batch: ${figures}. ${errors}`,
  };
}

function impliedDensity(netKg: number, { dipLitres, temperature }: DrumMeasured): KilogramsPerLitre | null {
  if (!(netKg > 0 && dipLitres > 0)) return null;
  try {
    return densityAt15From(kilogramsPerLitre(netKg / dipLitres), temperature);
  } catch (error) {
    // Outside the table of volume correction: no fuel at all.
    if (error instanceof RangeError) return null;
    throw error;
  }
}
