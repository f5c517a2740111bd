import {
  type Feet,
  feet,
  type Hours,
  hours,
  type Kilograms,
  type KilogramsPerLitre,
  type Kilometres,
  kilograms,
  kilometres,
  type Litres,
  litres,
  type Metres,
  type Minutes,
  metres,
  minutes,
  type NauticalMiles,
  nauticalMiles,
  type Pounds,
  pounds,
  type UsGallons,
  usGallons,
} from './quantity.js';

// Exact by definition: the international yard and pound agreement of 1959 (pound, foot), the US gallon of
// 231 cubic inches, and the international nautical mile of 1929.
const kilogramsPerPound = 0.45359237;
const litresPerUsGallon = 3.785411784;
const metresPerFoot = 0.3048;
const kilometresPerNauticalMile = 1.852;

export const kilogramsFromPounds = (weight: Pounds): Kilograms => kilograms(weight * kilogramsPerPound);
export const poundsFromKilograms = (weight: Kilograms): Pounds => pounds(weight / kilogramsPerPound);

export const litresFromUsGallons = (volume: UsGallons): Litres => litres(volume * litresPerUsGallon);
export const usGallonsFromLitres = (volume: Litres): UsGallons => usGallons(volume / litresPerUsGallon);

export const metresFromFeet = (length: Feet): Metres => metres(length * metresPerFoot);
export const feetFromMetres = (length: Metres): Feet => feet(length / metresPerFoot);

export const kilometresFromNauticalMiles = (distance: NauticalMiles): Kilometres =>
  kilometres(distance * kilometresPerNauticalMile);
export const nauticalMilesFromKilometres = (distance: Kilometres): NauticalMiles =>
  nauticalMiles(distance / kilometresPerNauticalMile);

export const hoursFromMinutes = (time: Minutes): Hours => hours(time / 60);
export const minutesFromHours = (time: Hours): Minutes => minutes(time * 60);

/** What a volume of fuel weighs at that density (litres and density at the same temperature). */
export const massOf = (volume: Litres, density: KilogramsPerLitre): Kilograms => kilograms(volume * density);

/** The volume that a mass of fuel fills at that density. */
export const volumeOf = (mass: Kilograms, density: KilogramsPerLitre): Litres => litres(mass / density);
