import { z } from 'zod';
import { litres, wholeList } from '../field.js';

/** The levels that a cache is held against, and what it has room for. */
export const setLevels = {
  minimumLitres: litres,
  criticalLitres: litres,
  medevacReserveLitres: litres.describe('The bottom slice of the minimum: no routine draw goes into it.'),
  capacityDrums: z.number(),
};

export const cacheLevelsAnswer = wholeList(
  z.strictObject({
    place: z.string(),
    level: z.enum(['low', 'enough']),
  }),
).meta({ id: 'CacheLevels' });
