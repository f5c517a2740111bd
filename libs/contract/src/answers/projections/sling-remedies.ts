import { z } from 'zod';
import { type Answer, hours, isoDate, litres } from '../field.js';
import { slingMove } from '../planned.js';

export const lowestLevelAnswer = z
  .strictObject({
    date: isoDate,
    litres: litres,
  })
  .meta({ id: 'LowestLevel' });

export const lowestLevelsAnswer = z
  .strictObject({
    place: z.string(),
    minimumLitres: litres,
    before: lowestLevelAnswer,
    after: lowestLevelAnswer,
  })
  .meta({ id: 'LowestLevels', description: 'The lowest evening of a cache among those that differ.' });

export const slingWorkAnswer = z
  .strictObject({
    helicopter: z.string(),
    lifts: z.number().describe('Out with a load and back, so many times.'),
    hours: hours.nullable().describe('Null: the operator has set no speed under a sling for it.'),
    litres: litres.nullable().describe('For these hours; in no level, as far as no task has them.'),
  })
  .meta({ id: 'SlingWork', description: 'What a sling asks of its helicopter.' });

export const slingMovedAnswer = z
  .strictObject({
    date: isoDate,
    effect: z.enum(['removes', 'lessens']).describe('Whether the cache then ends any day below its minimum.'),
    fed: lowestLevelsAnswer,
    source: lowestLevelsAnswer,
    work: slingWorkAnswer,
    hoursThen: hours.describe(
      'Of the helicopter on its new day and on the day that it leaves, the sling counted in.',
    ),
    hoursOwnDay: hours,
  })
  .meta({
    id: 'SlingMoved',
    description: 'The sling on an earlier day, and what that does between the two days.',
  });

export const slingRemedyAnswer = z
  .strictObject({
    kept: z
      .strictObject({
        id: z.string(),
        version: z.number(),
        data: slingMove,
      })
      .nullable()
      .describe('The line of the programme as it is kept, whole; null: it is not kept like that yet.'),
    place: z.string(),
    shortOn: isoDate.describe('The first day that ends below the minimum, and what is usable that evening.'),
    shortLitres: litres,
    minimumLitres: litres,
    criticalLitres: litres,
    sling: slingMove.describe('As it is planned.'),
    move: slingMovedAnswer.nullable().describe('Null: no earlier day is better.'),
    notOn: z
      .array(
        z.strictObject({
          date: isoDate,
          why: z.string(),
        }),
      )
      .describe("Days between that one and the sling's own that will not do, the sling's own first."),
  })
  .meta({
    id: 'SlingRemedyAnswer',
    description:
      'A cache that falls short before a sling that feeds it, and the day on which it would come in time.',
  });
export type SlingRemedyAnswer = Answer<typeof slingRemedyAnswer>;
