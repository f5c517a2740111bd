import type {
  Centimetres,
  Cents,
  CentsPerLitre,
  Feet,
  Hours,
  Inches,
  Kilograms,
  KilogramsPerLitre,
  Knots,
  Litres,
  Minutes,
  NauticalMiles,
  Pounds,
  PoundsPerHour,
} from '@drumline/units';
import { z } from 'zod';

// Every field says its unit, its meaning and an example: the JSON Schema and the tables of
// docs/scenario-format.md are written from them.

const atLeastZero = z.number().nonnegative();

// The brand lives at compile time only, so the schema of a plain number is the schema of the quantity.
const quantity =
  <Q extends number>(unit: string, plain: z.ZodNumber = atLeastZero) =>
  (description: string, example: number) =>
    plain.meta({ description, unit, examples: [example] }) as unknown as z.ZodType<Q, number>;

export const kg = quantity<Kilograms>('kg');
export const lb = quantity<Pounds>('lb');
export const litres = quantity<Litres>('L');
export const nm = quantity<NauticalMiles>('NM');
export const inches = quantity<Inches>('in', z.number());
export const centimetres = quantity<Centimetres>('cm', z.number().positive());
export const kt = quantity<Knots>('kt');
export const signedKt = quantity<Knots>('kt', z.number());
export const hours = quantity<Hours>('h');
export const minutes = quantity<Minutes>('min');
export const lbPerHour = quantity<PoundsPerHour>('lb/h', z.number().positive());
export const kgPerLitre = quantity<KilogramsPerLitre>('kg/L', z.number().positive());
export const cents = quantity<Cents>('cent', z.number().int().nonnegative());
export const centsPerLitre = quantity<CentsPerLitre>('cent/L');
export const elevationFt = quantity<Feet>('ft', z.number());
export const feet = quantity<Feet>('ft', z.number().positive());
export const speedKt = quantity<Knots>('kt', z.number().positive());

const figure = (unit: string, plain: z.ZodNumber) => (description: string, example: number) =>
  plain.meta({ description, unit, examples: [example] });

export const drums = figure('drums', z.number().int().nonnegative());
export const days = figure('days', z.number().int().positive());
export const horizonDays = figure('days', z.number().int().min(1).max(366));
export const persons = figure('persons', z.number().int().nonnegative());
export const price = figure('cent/L', z.number().nonnegative());
export const percent = figure('%', z.number().min(0).max(100));
export const chance = figure('0 to 1', z.number().min(0).max(1));
export const latitudeDeg = figure('deg', z.number().min(-90).max(90));
export const longitudeDeg = figure('deg', z.number().min(-180).max(180));
export const gFactor = figure('g', z.number().nonnegative());
export const degrees = figure('deg', z.number().min(0).max(90));
export const litresPerHour = figure('L/h', z.number().positive());
export const order = figure('', z.number().int().positive());

export const text = (description: string, example: string) =>
  z
    .string()
    .min(1)
    .meta({ description, examples: [example] });

/** The name of a thing listed elsewhere in the document. */
export const reference = (list: string, description: string, example: string) =>
  text(`${description}; listed in \`${list}\``, example);

export const placeCode = (description: string, example: string) =>
  z
    .string()
    .regex(/^[A-Z]{4}$/, 'a place code is four capital letters, like XLOR')
    .meta({ description, examples: [example] });

export const isoDate = (description: string, example: string) =>
  z.iso
    .date('a day is written YYYY-MM-DD, like 2027-06-14')
    .meta({ description, unit: 'local day', examples: [example] });

const instantPattern = new RegExp(
  z.core.regexes.date.source.replace(/\$$/, 'T(?:[01]\\d|2[0-3]):[0-5]\\d(?::[0-5]\\d)?Z$'),
);

export const instant = (description: string, example: string) =>
  z
    .string()
    .regex(
      instantPattern,
      'give the day and the time in UTC, with T between and Z behind, like 2027-06-14T06:00Z',
    )
    .meta({ description, unit: 'UTC', examples: [example] });

export const clockTime = (description: string, example: string) =>
  z
    .string()
    .regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a clock time is written HH:MM, from 00:00 to 23:59')
    .meta({ description, unit: 'local time', examples: [example] });
