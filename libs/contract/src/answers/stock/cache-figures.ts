import { z } from 'zod';
import { hours, isoDate, litres } from '../field.js';
import { cacheLevel } from '../words.js';
import { setLevels } from './set-levels.js';
import { countAnswer } from './standing.js';

export const agedOutDrumAnswer = z
  .strictObject({
    place: z.string(),
    number: z.string(),
    litres: litres.describe('Litres left in it by then.'),
    retestDue: isoDate.describe('Last day on which it may be used.'),
    dueDay: z.number().describe('The same as a day of the plan, from 1.'),
  })
  .meta({
    id: 'AgedOutDrum',
    description: 'A drum that is fit today and passes its retest date with fuel still in it.',
  });

/** A count, held against what the book had then. */
export const countHeldAgainst = z.strictObject({
  count: countAnswer,
  toleranceLitres: litres,
  verdict: z.enum(['accepted', 'lower', 'higher']),
  countedLitres: litres,
});

export const lastCountAnswer = countHeldAgainst.extend({ ageHours: hours }).meta({ id: 'LastCount' });

export const cacheFiguresAnswer = z
  .strictObject({
    level: cacheLevel,
    drawableLitres: litres.describe('What routine draws may take.'),
    isOverCapacity: z.boolean(),
    daysOfCover: z.number().nullable(),
    projection: z.strictObject({
      drawn: z.array(litres).describe('Litres that draws ask for, the unmet part included.'),
      dates: z.array(isoDate),
      book: z.array(litres),
      usable: z.array(litres),
      standing: z
        .array(litres)
        .describe(
          "Litres at the site after the day's landings and slings in, before anything leaves: compared with the capacity.",
        ),
      landed: z.array(litres),
      slungIn: z.array(litres),
      slungOut: z.array(litres),
      unmet: z
        .array(litres)
        .describe(
          'Litres asked for that could not be drawn without going into the reserve, by day. They are not drawn later.',
        ),
      slingShortDrums: z
        .array(z.number())
        .describe('Drums that a sling was to take and that did not stand there sealed and fit, by day.'),
      pastRetest: z
        .array(litres)
        .describe('Fit litres that passed their retest date the day before, by day.'),
      agedOut: z
        .array(agedOutDrumAnswer)
        .describe(
          'The drums behind `pastRetest`: in date at the opening, but not when the plan would burn them.',
        ),
      belowMinimumDay: z
        .number()
        .nullable()
        .describe('First level below the minimum; 0: already at the opening; null: never.'),
      belowCriticalDay: z.number().nullable(),
      runOutDay: z.number().nullable().describe('First level at or below zero.'),
    }),
    ...setLevels,
  })
  .meta({ id: 'CacheFigures' });

export const stockCacheInShortAnswer = cacheFiguresAnswer
  .extend({
    projection: cacheFiguresAnswer.shape.projection.pick({
      book: true,
      usable: true,
      belowMinimumDay: true,
      belowCriticalDay: true,
      runOutDay: true,
    }),
  })
  .meta({ id: 'StockCacheInShort' });
