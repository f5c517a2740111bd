import { z } from 'zod';
import { kg, lb } from '../field.js';
import { limitName, surfaceState } from '../words.js';

export const barBlockAnswer = z
  .strictObject({
    name: z.string(),
    kg: kg,
    lb: lb.describe('Whole, as printed.'),
    isDrum: z.boolean(),
    onHold: z.literal(true).describe('A drum that is held; absent: it is none.').exactOptional(),
  })
  .meta({ id: 'BarBlock', description: 'One thing aboard, as a block of the bar.' });

export const barLimitAnswer = z
  .strictObject({
    name: limitName,
    place: z.string().nullable().describe('Null: a limit of the aeroplane.'),
    surface: surfaceState.nullable().describe('State of the strip it is for; null with the place.'),
    moment: z.enum(['zero fuel', 'take-off', 'landing']),
    limitLb: lb,
    spareLb: lb.describe('Of the printed sum; negative: over.'),
    holds: z.boolean(),
    binds: z
      .boolean()
      .describe('The nearest of the weights that this leg is flown under: it binds, unless a count does.'),
  })
  .meta({ id: 'BarLimit', description: 'One limit, measured from the weight it concerns.' });

export const payloadBarAnswer = z
  .strictObject({
    operatingLb: lb,
    load: z.array(barBlockAnswer),
    fuelOnLandingLb: lb.describe(
      'Fuel left on landing, and what the leg burns after taxi: together what is aboard at take-off.',
    ),
    tripLb: lb,
    limits: z.array(barLimitAnswer).describe('By moment: zero fuel, take-off, landing; then leaving again.'),
    forbiddenBy: z.string().nullable().describe('Why it may not be flown at all; null: it may.'),
    boundByCount: z
      .strictObject({ name: limitName, aboard: z.number(), most: z.number() })
      .nullable()
      .describe('A limit on how many drums that binds before any weight; null: the nearest weight binds.'),
    forbiddenWhenSoft: z
      .string()
      .nullable()
      .describe('Why it may not be flown when the strip is soft; null: it may.'),
    drums: z.number(),
    drumPositions: z.number(),
    relax: z.string().describe('What would let more go, or what has to change for this load to go.'),
  })
  .meta({
    id: 'PayloadBar',
    description:
      'The weights of a leg side by side from the operating weight to the trip fuel, with every limit. Whole pounds.',
  });
