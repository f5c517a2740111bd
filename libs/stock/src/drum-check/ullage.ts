import { celsius, type Litres, litres, print, printNumber, volumeAt, volumeAt15 } from '@drumline/units';
import type { FuelState } from './fuel-quantity.js';

/** A drum may not be full of liquid at 55 °C (49 CFR 173.24a(d), ICAO Technical Instructions 4;1; words from memory). */
const hottest = celsius(55);

/** Room left in a filled drum when it is as hot as the rule asks. */
export interface Ullage {
  readonly litresAt55: Litres;
  /** Negative: the fuel does not fit. */
  readonly roomLitres: Litres;
  /** Of the whole drum. */
  readonly percent: number;
  readonly fits: boolean;
  /** Most litres that may be filled at this temperature. */
  readonly mostLitres: Litres;
  readonly words: string;
}

/**
 * What is left of a drum's whole volume when fuel filled at its temperature warms to 55 °C; the drum's own expansion is
 * not counted, which is on the safe side. Throws a RangeError where the density at 15 °C is outside table 54B.
 */
export function ullageAt55(filled: Litres, state: FuelState, wholeDrum: Litres): Ullage {
  const { densityAt15, temperature } = state;
  const at55 = (volume: Litres) =>
    volumeAt(volumeAt15(volume, densityAt15, temperature), densityAt15, hottest);
  const litresAt55 = at55(filled);
  const room = litres(wholeDrum - litresAt55);
  const mostLitres = litres(wholeDrum / at55(litres(1)));
  const percent = (room / wholeDrum) * 100;
  const fits = room > 0;
  const filling = `${print(filled, 'L')} filled at ${print(temperature, 'degC')}`;
  const hot = `${print(litresAt55, 'L', 1)} at ${print(hottest, 'degC')} in a drum of ${print(wholeDrum, 'L', 1)}`;
  const words = fits
    ? `${filling} are ${hot}: ${printNumber(percent, 1)} % left.`
    : `${filling} are ${hot}: too full. At most ${print(litres(Math.floor(mostLitres)), 'L')} at this temperature.`;
  return { litresAt55, roomLitres: room, percent, fits, mostLitres, words };
}
