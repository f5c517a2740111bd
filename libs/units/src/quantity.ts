declare const unit: unique symbol;

/** A plain number that knows its unit at compile time: `plus(kilograms(1), litres(2))` does not compile. */
export type Quantity<U extends string> = number & { readonly [unit]: U };

export type Kilograms = Quantity<'kg'>;
export type Pounds = Quantity<'lb'>;
export type Litres = Quantity<'L'>;
export type UsGallons = Quantity<'US gal'>;
export type NauticalMiles = Quantity<'NM'>;
export type Kilometres = Quantity<'km'>;
export type Feet = Quantity<'ft'>;
export type Metres = Quantity<'m'>;
export type Inches = Quantity<'in'>;
export type Centimetres = Quantity<'cm'>;
export type Knots = Quantity<'kt'>;
export type Hours = Quantity<'h'>;
export type Minutes = Quantity<'min'>;
export type Days = Quantity<'day'>;
export type PoundsPerHour = Quantity<'lb/h'>;
export type LitresPerDay = Quantity<'L/day'>;
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
export const kilometres = make<Kilometres>();
export const feet = make<Feet>();
export const metres = make<Metres>();
export const inches = make<Inches>();
export const centimetres = make<Centimetres>();
export const knots = make<Knots>();
export const hours = make<Hours>();
export const minutes = make<Minutes>();
export const days = make<Days>();
export const poundsPerHour = make<PoundsPerHour>();
export const litresPerDay = make<LitresPerDay>();
export const kilogramsPerLitre = make<KilogramsPerLitre>();
export const celsius = make<Celsius>();
export const cents = make<Cents>();
export const centsPerLitre = make<CentsPerLitre>();

/** A number without a unit: a factor, a count, a share. A quantity is refused here. */
export type PlainNumber = number & { readonly [unit]?: never };

/** `Q` itself where it is one unit, `never` where it is a union of units. */
type OneUnit<Q, Whole = Q> = Q extends Whole ? ([Whole] extends [Q] ? Q : never) : never;

/** The sum of two quantities of one unit. */
export const plus = <Q extends Quantity<string>>(a: Q, b: NoInfer<Q>): Q => (a + b) as Q;

/** `a` less `b`, both of one unit. */
export const minus = <Q extends Quantity<string>>(a: Q, b: NoInfer<Q>): Q => (a - b) as Q;

/** The quantity times a number without a unit; the unit stays. */
export const times = <Q extends Quantity<string>>(quantity: Q, factor: PlainNumber): Q =>
  (quantity * factor) as Q;

/** The sum of a list of one unit; 0 of an empty list. */
export const sum = <Q extends Quantity<string>>(
  quantities: readonly Q[] & readonly NoInfer<OneUnit<Q>>[],
): Q => (quantities as readonly number[]).reduce((total, each) => total + each, 0) as Q;
