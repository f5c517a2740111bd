declare const unit: unique symbol;

/** A plain number that knows its unit at compile time: `plus(kilograms(1), litres(2))` does not compile. */
export type Quantity<U extends string> = number & { readonly [unit]: U };

export type Kilograms = Quantity<'kg'>;
export type Pounds = Quantity<'lb'>;
export type Litres = Quantity<'L'>;
export type UsGallons = Quantity<'US gal'>;
export type NauticalMiles = Quantity<'NM'>;
export type Feet = Quantity<'ft'>;
export type Inches = Quantity<'in'>;
export type Knots = Quantity<'kt'>;
export type Hours = Quantity<'h'>;
export type Minutes = Quantity<'min'>;
export type PoundsPerHour = Quantity<'lb/h'>;
export type KilogramsPerLitre = Quantity<'kg/L'>;
export type Celsius = Quantity<'degC'>;
/** Money: a whole number of hundredths of the operator's currency. */
export type Cents = Quantity<'cent'>;
/** A price per litre, in (possibly fractional) hundredths of the operator's currency. */
export type CentsPerLitre = Quantity<'cent/L'>;

const make =
  <Q extends Quantity<string>>() =>
  (value: number): Q =>
    value as Q;

export const kilograms = make<Kilograms>();
export const pounds = make<Pounds>();
export const litres = make<Litres>();
export const usGallons = make<UsGallons>();
export const nauticalMiles = make<NauticalMiles>();
export const feet = make<Feet>();
export const inches = make<Inches>();
export const knots = make<Knots>();
export const hours = make<Hours>();
export const minutes = make<Minutes>();
export const poundsPerHour = make<PoundsPerHour>();
export const kilogramsPerLitre = make<KilogramsPerLitre>();
export const celsius = make<Celsius>();
export const cents = make<Cents>();
export const centsPerLitre = make<CentsPerLitre>();
