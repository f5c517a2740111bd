import type { AircraftRating, ParticularsSource, WrittenRating } from '@drumline/loading';
import { z } from 'zod';
import { degrees, gFactor, lb, reference, text } from './field.js';

// Load sheets: how drums are tied, and what the pilot is told of the dangerous goods aboard.

const loadFactorsSchema = z
  .strictObject({
    forward: gFactor('Forward', 9),
    aft: gFactor('Aft', 1.5),
    sideways: gFactor('Sideways', 1.5),
    up: gFactor('Up', 3),
    reference: text('Document and revision that gives them', 'loading manual 4.2, revision 5'),
  })
  .meta({ id: 'LoadFactors', description: 'Ultimate load factors that the load is tied for' });

const roadRatingSchema = z
  .strictObject({
    figure: z.literal('working load for the road'),
    workingLoadLb: lb('Working load limit', 3335),
  })
  .meta({ id: 'RoadRating', description: 'A figure for lorries: refused' });

const aircraftRatingSchema = z
  .strictObject({
    figure: z.literal('ultimate load in an aircraft'),
    ultimateLb: lb('Ultimate load', 5000),
    reference: text('Approval, standard or manual that rates it for aircraft', 'strap approval 12'),
  })
  .meta({
    id: 'AircraftRating',
    description: 'What it holds in an aircraft, with the document that says so',
  });

const noRoadFigure =
  'a working load for the road is no aircraft restraint: give the ultimate load and the document that rates it for aircraft';

/** The kind of figure is asked first, with the road before the aircraft: whoever does not look is refused. */
const ratingSchema = (description: string) =>
  z
    .discriminatedUnion('figure', [roadRatingSchema, aircraftRatingSchema])
    .refine(({ figure }) => figure !== 'working load for the road', {
      path: ['figure'],
      message: noRoadFigure,
    })
    .refine((written) => 'workingLoadLb' in written || written.ultimateLb > 0, {
      path: ['ultimateLb'],
      message: 'give more than 0 lb',
    })
    // What passes is for aircraft; the kind that is refused stays in the schema, so that it can be asked for.
    .meta({ description }) as unknown as z.ZodType<AircraftRating, WrittenRating>;

const kitSchema = z
  .strictObject({
    strap: ratingSchema('Strap'),
    fitting: ratingSchema('End fitting'),
    floorRing: ratingSchema('Floor ring'),
    angles: z
      .strictObject({
        aboveFloorDeg: degrees('Above the floor', 30),
        offAxisDeg: degrees('Off the long axis, seen from above', 30),
      })
      .meta({ id: 'StrapAngles', description: 'How a strap lies' }),
  })
  .meta({ id: 'TieDownKit', description: 'The parts of one strap’s path; the weakest decides' });

export const tieDownSchema = z
  .strictObject({
    type: reference(
      'aircraftTypes',
      'Type of aeroplane; "every type": each that has none of its own',
      'every type',
    ),
    factors: loadFactorsSchema,
    kit: kitSchema,
  })
  .meta({
    id: 'TieDownSetting',
    description: 'What straps are counted by, as a planning aid; the approved loading manual decides',
  });

const sources = [
  'number and kind of packages',
  'quantity of each package',
  'largest and smallest package',
  'total quantity',
  'positions',
  'drum numbers',
  'place of unloading',
  'uncleaned empties',
  'passengers',
  'date of flight',
  'approval cited',
  'emergency contact',
] as const satisfies readonly ParticularsSource[];

const particularsFieldSchema = z
  .strictObject({
    label: text('Wording', 'UN number'),
    value: z
      .union(
        [
          z
            .strictObject({ text: text('Text', 'UN 1863') })
            .meta({ id: 'FixedText', description: 'A fixed text' }),
          z
            .strictObject({
              from: z.enum(sources).meta({ description: 'What', examples: ['drum numbers'] }),
            })
            .meta({ id: 'FromTheFlight', description: 'Filled in from the flight' }),
          z.literal('written by hand'),
        ],
        'give { "text": ... }, { "from": ... } or "written by hand"',
      )
      .meta({ description: 'What stands there', examples: [{ from: 'drum numbers' }] }),
  })
  .meta({ id: 'ParticularsField', description: 'Field for the pilot' });

export const dangerousGoodsSchema = z
  .strictObject({
    reference: text('Rule or manual that the set follows', 'operations manual 9.1, revision 2'),
    packaging: text('Kind of package', 'steel drum 1A1'),
    emergencyContact: text('Emergency contact, day and night', 'operations desk, radio and telephone'),
    fields: z
      .array(particularsFieldSchema)
      .min(1)
      .refine(
        (fields) =>
          fields.some(
            ({ value }) => typeof value === 'object' && 'from' in value && value.from === 'emergency contact',
          ),
        'one field has to show the emergency contact',
      )
      .meta({ description: 'Fields in the order in which they are printed' }),
  })
  .meta({
    id: 'DangerousGoods',
    description: 'What the pilot is told of turbine fuel aboard, field by field',
  });
