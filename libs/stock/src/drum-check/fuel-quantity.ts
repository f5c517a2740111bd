import {
  type Celsius,
  densityAt,
  type Kilograms,
  type KilogramsPerLitre,
  type Litres,
  massOf,
  type Pounds,
  poundsFromKilograms,
  volumeAt15,
  volumeOf,
} from '@drumline/units';

/** Fuel of a batch at a temperature. */
export interface FuelState {
  readonly densityAt15: KilogramsPerLitre;
  readonly temperature: Celsius;
}

/** One amount of fuel in every unit; litres and density are those at the temperature. */
export interface FuelQuantity {
  readonly litres: Litres;
  readonly litresAt15: Litres;
  readonly density: KilogramsPerLitre;
  readonly kg: Kilograms;
  readonly lb: Pounds;
}

/**
 * Litres read at a temperature, as litres at 15 °C, kg and lb, by the batch's density. Volume correction: table 54B.
 * Throws a RangeError where the density at 15 °C is outside the table.
 */
export function quantityOfLitres(litres: Litres, { densityAt15, temperature }: FuelState): FuelQuantity {
  const density = densityAt(densityAt15, temperature);
  const kg = massOf(litres, density);
  const litresAt15 = volumeAt15(litres, densityAt15, temperature);
  return { litres, litresAt15, density, kg, lb: poundsFromKilograms(kg) };
}

/** The same for fuel that was weighed: kg net. Throws as `quantityOfLitres`. */
export const quantityOfWeight = (netKg: Kilograms, state: FuelState): FuelQuantity =>
  quantityOfLitres(volumeOf(netKg, densityAt(state.densityAt15, state.temperature)), state);
