import { z } from 'zod';
import { notSeenAnswer } from '../drums/not-seen.js';
import { type Answer, instant, isoDate, litres } from '../field.js';
import { cacheAnswer } from './cache.js';
import { slingRemedyAnswer } from './sling-remedies.js';

/** From when on caches are projected, and by what. */
const horizon = {
  asOf: instant,
  firstDay: isoDate,
  dates: z.array(isoDate).describe('Day 1 and on: figures by day have one entry more, index 0 is now.'),
  fillLitres: litres,
  serviceLevelPercent: z.number(),
  laterIdeas: z
    .number()
    .describe('Flights of the standing plan later than those it offered: no level counts them.'),
  notHeardFrom: z.array(notSeenAnswer).describe('People of the field whose phones may hold reports.'),
};

export const projectionsAnswer = z
  .strictObject({
    ...horizon,
    items: z.array(cacheAnswer),
    slingRemedies: z.array(slingRemedyAnswer),
    next: z.null(),
  })
  .meta({
    id: 'ProjectionsAnswer',
    description: 'Answer of GET /api/projections: every cache and where its stock leads.',
  });
export type ProjectionsAnswer = Answer<typeof projectionsAnswer>;

export const projectionAnswer = cacheAnswer
  .extend(horizon)
  .meta({ id: 'ProjectionAnswer', description: 'Answer of GET /api/projections/:place.' });
export type ProjectionAnswer = Answer<typeof projectionAnswer>;
