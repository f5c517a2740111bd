import { z } from 'zod';
import { type Answer, cents, hours, isoDate, litres } from '../field.js';
import { setLevels } from '../stock/set-levels.js';
import { levelsAnswer } from './cache.js';
import { slingRemedyAnswer } from './sling-remedies.js';

export const cacheCourseAnswer = z.strictObject({ levels: levelsAnswer, ...setLevels }).meta({
  id: 'CacheCourse',
  description:
    'Where a cache leads with all its flights, approved and offered, and the levels that it is held against.',
});
export type CacheCourse = Answer<typeof cacheCourseAnswer>;

export const foreseenForProgrammeAnswer = z
  .strictObject({
    recharge: cents
      .nullable()
      .describe(
        'At what the flights ahead deliver for; null: nothing is flown to one of its places, and its rule asks for that.',
      ),
    programme: z.string(),
    name: z.string(),
    hours: hours,
    litres: litres,
  })
  .meta({ id: 'ForeseenForProgramme' });
export type ForeseenForProgramme = Answer<typeof foreseenForProgrammeAnswer>;

export const projectionChangeAnswer = z
  .strictObject({
    firstDay: isoDate,
    dates: z.array(isoDate),
    items: z.array(
      z.strictObject({
        place: z.string(),
        before: cacheCourseAnswer,
        after: cacheCourseAnswer,
      }),
    ),
    programmes: z
      .array(
        z.strictObject({
          before: foreseenForProgrammeAnswer,
          after: foreseenForProgrammeAnswer,
        }),
      )
      .describe('Helicopter hours and litres of the programmes that it changes.'),
    slingRemedies: z.array(slingRemedyAnswer).describe('After the change, of the caches that it touches.'),
  })
  .meta({
    id: 'ProjectionChangeAnswer',
    description:
      'Answer of POST /api/projections/consequence: the caches that one change of the territory touches.',
  });
export type ProjectionChangeAnswer = Answer<typeof projectionChangeAnswer>;
