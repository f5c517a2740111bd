import { z } from 'zod';
import { inches, lb } from '../field.js';

export const preparedPositionAnswer = z
  .strictObject({
    id: z.string(),
    armIn: inches,
    limitLb: lb,
    loadOrder: z
      .number()
      .describe('Deepest first: 1 is loaded first. Positions with the same figure are loaded in any order.'),
    unloadOrder: z.number().describe('1 comes out first.'),
  })
  .meta({ id: 'PreparedPosition' });

export const preparationListAnswer = z
  .strictObject({
    type: z.string(),
    configuration: z.string(),
    operatingWeightLb: lb,
    operatingArmIn: inches,
    reference: z.string(),
    positions: z.array(preparedPositionAnswer).describe('Front to back.'),
    freightPlaces: z.array(
      z.strictObject({
        id: z.string(),
        armIn: inches,
        limitLb: lb,
      }),
    ),
    seats: z.number(),
    standings: z
      .array(
        z.strictObject({
          drums: z.number(),
          positions: z.array(z.string()),
          why: z.string().nullable(),
        }),
      )
      .describe(
        'For each number of drums of planning weight: where they stand with that fuel, or why they cannot.',
      ),
  })
  .meta({
    id: 'PreparationList',
    description: 'What a loader prepares in a cabin before the drums come: one page for each configuration.',
  });
