import type { Millilitres } from '@drumline/stock';
import type {
  Centimetres,
  Cents,
  Feet,
  Hours,
  Inches,
  Kilograms,
  KilogramsPerLitre,
  Knots,
  Litres,
  NauticalMiles,
  Pounds,
} from '@drumline/units';
import { z } from 'zod';
import { type PermittedAct, permittedActs } from '../people/permission-table.js';
import { roles } from '../people/role.js';

// What the server answers it has made itself: figures are told with their kind, unit and brand, and no bounds.
const quantity = <Q extends number>(unit: string) =>
  z.number().meta({ unit }) as unknown as z.ZodType<Q, number>;

export const kg = quantity<Kilograms>('kg');
export const lb = quantity<Pounds>('lb');
export const litres = quantity<Litres>('L');
export const millilitres = quantity<Millilitres>('mL');
export const nm = quantity<NauticalMiles>('NM');
export const inches = quantity<Inches>('in');
export const centimetres = quantity<Centimetres>('cm');
export const feet = quantity<Feet>('ft');
export const kt = quantity<Knots>('kt');
export const hours = quantity<Hours>('h');
export const cents = quantity<Cents>('cent');
export const kgPerLitre = quantity<KilogramsPerLitre>('kg/L');

export const isoDate = z.iso.date();
export const clockTime = z.string().regex(/^\d\d:\d\d$/);
/** A moment, in UTC. */
export const instant = z
  .string()
  .regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{1,6})?)?Z$/)
  .meta({ unit: 'UTC' });

export const permittedAct = z.enum(permittedActs as readonly [PermittedAct, ...PermittedAct[]]);
export const role = z.enum(roles);

/** A list in pieces: `next` is given as `after` to read on; null: this was the last. */
export const pageOf = <Item extends z.ZodType>(item: Item) =>
  z.strictObject({ items: z.array(item), next: z.string().nullable() });

/** A list that comes whole. */
export const wholeList = <Item extends z.ZodType>(item: Item) =>
  z.strictObject({ items: z.array(item), next: z.null() });

/** What an answer is once it is read. */
export type Answer<Schema extends z.ZodType> = Whole<z.output<Schema>>;

type Whole<T> = unknown extends T
  ? T
  : T extends string | number | boolean | null | undefined
    ? T
    : { readonly [K in keyof T]: Whole<T[K]> };
