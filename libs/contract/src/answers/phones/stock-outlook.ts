import { z } from 'zod';
import { scenarioSchema } from '../../scenario/scenario-schema.js';
import { countToleranceSchema } from '../../scenario/stock-schema.js';
import { instant, isoDate, litres, nm } from '../field.js';
import { batchAnswer, countAnswer, standingDrumAnswer } from '../stock/standing.js';

export const stockPictureAnswer = z
  .strictObject({
    asOf: instant.describe('Counts made later are not known yet.'),
    drums: z.array(standingDrumAnswer),
    batches: z.array(batchAnswer),
    counts: z.array(countAnswer),
    countTolerance: countToleranceSchema,
  })
  .meta({ id: 'StockPicture', description: 'What is known of the drums at one moment.' });

export const drawAnswer = z
  .strictObject({
    date: isoDate,
    place: z.string(),
    litres: litres,
    for: z.string(),
  })
  .meta({
    id: 'Draw',
    description:
      "Fuel leaving a cache by plan: helicopter programme, planned uplift, or the sling's own fuel.",
  });

export const landingAnswer = z
  .strictObject({
    date: isoDate,
    place: z.string(),
    litres: litres,
    retestDue: isoDate.nullable().describe('Null: filled fresh, fit throughout the plan.'),
    held: z.literal(true).exactOptional().describe('On hold: they stand there and may not be used.'),
  })
  .meta({ id: 'Landing', description: 'Full drums set down at a place by an aeroplane.' });

export const drumMoveAnswer = z
  .strictObject({
    date: isoDate,
    from: z.string(),
    to: z.string(),
    drums: z.number(),
    /** Of a sling of the territory, which comes whole. */
    helicopter: z.string().exactOptional(),
    distanceNm: nm.exactOptional(),
  })
  .meta({ id: 'DrumMove', description: 'Sealed drums carried from one place to another on a day.' });

export const stockOutlookAnswer = z
  .strictObject({
    picture: stockPictureAnswer,
    caches: z.array(scenarioSchema.shape.caches.element),
    dates: z.array(isoDate).describe('The days of the plan, in order; at least one.'),
    fillLitres: litres.describe('Litres in a full drum.'),
    draws: z.array(drawAnswer),
    landings: z.array(landingAnswer),
    slings: z.array(drumMoveAnswer),
  })
  .meta({
    id: 'StockOutlook',
    description:
      'Stock today and everything that is known to move it. Draws, landings and slings on other dates are left out.',
  });
