import { z } from 'zod';
import { cents, hours, lb, placeCode } from '../scenario/field.js';
import { grossKg, longText, shortText, written } from './written-field.js';

const flight = shortText('Flight', 'F05');
const reason = longText('Why', 'cloud on the pass');
const place = placeCode('Where it landed', 'XMER');

/** What a crew may have that no other report says. */
export const problemWords = [
  'wrong drum',
  'cannot unload',
  'did not land',
  'aircraft',
  'strip not as said',
  'other',
] as const;

const kind = <Kind extends string, Fields extends z.ZodRawShape>(name: Kind, fields: Fields) =>
  z.strictObject({ kind: z.literal(name), flight, ...written, ...fields }).meta({ title: name });

const printedLb = (description: string, example: number) =>
  lb(description, example).refine((weight) => Number.isInteger(weight), 'a printed weight is whole pounds');

/** The load, and the take-off weight, each from two hands. */
const totalsSchema = z
  .strictObject({
    load: z.strictObject({
      bySheetLb: printedLb('Load as printed on the sheet', 2378),
      byHandLb: printedLb('Load as added by hand', 2378),
    }),
    takeOff: z.strictObject({
      bySheetLb: printedLb('Take-off weight as printed on the sheet', 8528),
      byAircraftLb: printedLb('Take-off weight as the aircraft shows it', 8528),
    }),
  })
  .meta({ id: 'LoadedTotals', description: 'Load and take-off weight, each from two hands' });

const loadedDrumSchema = z
  .strictObject({
    movement: z
      .uuid()
      .toLowerCase()
      .meta({ description: 'Id of the movement that its loading is; made by the sender' }),
    drum: shortText('Number of the drum', '0451'),
    to: placeCode('Stop at which it is to be left', 'XLOR'),
    position: shortText('Where it stands in the cabin; absent: as planned', 'R1L').exactOptional(),
    grossKg: grossKg('Weight of drum and fuel by its crew; counts where no book has the drum', 190)
      .refine((kg) => kg > 0, 'a drum weighs something')
      .exactOptional(),
  })
  .meta({ id: 'LoadedDrum', description: 'A drum that is aboard' });

/** What a crew reports of a flight; its id is in the address, and the server says when it came in and who sent it. */
export const flightReportSchema = z.discriminatedUnion('kind', [
  kind('load', {
    version: z
      .number()
      .int()
      .min(1)
      .meta({ description: 'Version of the sheet it was loaded by', examples: [1] }),
    checkCode: shortText('Check code of the sheet it was loaded by, read off paper', 'U9XA').exactOptional(),
    totals: totalsSchema,
    drums: z.array(loadedDrumSchema).max(100).readonly().meta({ description: 'Every drum aboard' }),
    signed: z
      .strictObject({
        by: shortText('Who signs', 'A. Pilot'),
        reason,
        second: shortText('Who else has seen both figures', 'S. Keeper').exactOptional(),
      })
      .meta({ description: 'Accepts totals that differ by more than the tolerance; it takes two people' })
      .exactOptional(),
    bySoftFigures: z
      .boolean()
      .meta({ description: 'Loaded by the soft figures, as no report of the surface is fresh' })
      .default(false),
    doesNotHold: longText(
      'What the sheet it was loaded by says against it, where it does not hold',
      'XALD-XLOR: R3L: 551 lb, limit 450 lb: 101 lb over.',
    ).exactOptional(),
    allTheSame: z
      .boolean()
      .meta({
        description:
          'It stands so in the aeroplane: where it may not be entered as loaded it is kept and raised, not refused',
      })
      .exactOptional(),
  }),
  kind('take off', {}),
  kind('land', { place }),
  kind('turn back', { place }),
  kind('end elsewhere', { place }),
  kind('refuse', { reason: reason.exactOptional() }),
  kind('report', {}),
  // Moves nothing: somebody at base has to look.
  kind('problem', {
    what: z.enum(problemWords).meta({ description: 'What it is', examples: ['cannot unload'] }),
    words: longText('In a few words', 'drum 0575 jammed in R2L').exactOptional(),
  }),
]);

export type FlightReportBody = z.output<typeof flightReportSchema>;

/** What a flight took in the end. */
export const closingSchema = z
  .strictObject({
    blockHours: hours('Hours flown, off blocks to on blocks', 1.9).refine(
      (time) => time <= 100,
      'a flight is no longer than 100 hours',
    ),
    flightCost: cents('Cost of flying it', 190_000),
    fuelCost: cents('Cost of the fuel landed', 180_000),
    handlingCost: cents('Handling of the drums', 5_400),
    note: longText('Anything else', 'waited 20 min for the strip').exactOptional(),
  })
  .meta({ id: 'Closing', description: 'Hours and costs of a flight that was flown' });

export type Closing = z.output<typeof closingSchema>;
