import { z } from 'zod';
import { type Answer, isoDate, litres } from '../field.js';
import { slingToCome } from '../planned.js';
import { agedOutDrumAnswer, lastCountAnswer } from '../stock/cache-figures.js';
import { setLevels } from '../stock/set-levels.js';
import { cacheLevel, confidence, standingState } from '../words.js';

export const cacheStockAnswer = z
  .strictObject({
    bookLitres: litres,
    countShortfallLitres: litres,
    heldLitres: litres,
    pastRetestLitres: litres,
    usableLitres: litres,
    drawableLitres: litres,
    level: cacheLevel,
    isOverCapacity: z.boolean(),
    sealedDrums: z.number(),
    partUsedDrums: z.number(),
    emptyDrums: z.number(),
    lastCount: lastCountAnswer
      .nullable()
      .describe(
        '`countedLitres`: as it was written down; `count.litres`: carried forward by what has moved since.',
      ),
    confidence: confidence,
    why: z.array(z.string()).describe('What keeps it from being high, each a sentence; empty: nothing.'),
  })
  .meta({ id: 'CacheStockAnswer' });

export const levelsAnswer = z
  .strictObject({
    usableLitres: z.array(litres),
    lowest: z
      .strictObject({ litres: litres, day: z.number() })
      .describe('At the end of a day, and the first such day: the lowest level that every page shows.'),
    bookLitres: z.array(litres),
    standingLitres: z.array(litres).describe("After the day's landings, before anything leaves."),
    outOfReserveLitres: z
      .array(litres)
      .describe('Taken from the medevac reserve by draws and slings; the level has it taken off.'),
    unmetLitres: z
      .array(litres)
      .describe('Asked for, and there is no fuel for it: the level is below 0 L by it.'),
    belowMinimumDay: z.number().nullable(),
    belowCriticalDay: z.number().nullable(),
    runOutDay: z.number().nullable(),
  })
  .meta({
    id: 'LevelsAnswer',
    description:
      'Figures by day, index 0 is now, index d the end of day d; the days of a shortfall are such indices.',
  });
export type LevelsAnswer = Answer<typeof levelsAnswer>;

export const deliveryAnswer = z
  .strictObject({
    flight: z.string(),
    drums: z.number(),
    heldDrums: z.number().describe('Of them, on hold: they count nothing until others go in their place.'),
    litres: z.number().describe('Of those that may be used.'),
    date: isoDate,
    state: standingState,
    half: z.enum(['morning', 'afternoon']),
    needsDecision: z
      .string()
      .nullable()
      .describe('Why somebody has to decide on it; null: nothing to decide.'),
  })
  .meta({ id: 'Delivery', description: 'Drums that a flight is to set down at a cache.' });

export const plannedDrawAnswer = z
  .strictObject({
    kind: z.enum(['helicopter task', 'planned uplift']),
    helicopter: z.string().nullable().describe('The helicopter of a task.'),
    date: isoDate,
    litres: litres,
    for: z.string(),
  })
  .meta({
    id: 'PlannedDraw',
    description:
      'Fuel that is planned to leave a cache into an aircraft; `for`: programme, or what an uplift is for.',
  });

export const drawNotReportedAnswer = z
  .strictObject({
    date: isoDate,
    place: z.string(),
    helicopter: z.string(),
    programme: z.string(),
    litres: litres,
  })
  .meta({ id: 'DrawNotReported', description: 'Litres of a helicopter task whose day is over.' });

export const cacheAnswer = z
  .strictObject({
    endTargetLitres: litres.nullable(),
    permitUntil: isoDate.nullable(),
    suggestedMinimum: z.strictObject({
      litres: litres,
      leadTimeUseLitres: litres,
      safetyStockLitres: litres,
      reserveLitres: litres,
    }),
    stock: cacheStockAnswer,
    daysOfCover: z
      .number()
      .nullable()
      .describe('Usable over the mean draw of the days ahead; null: nothing is drawn.'),
    projections: z.strictObject({
      noDeliveries: levelsAnswer,
      approved: levelsAnswer,
      offered: levelsAnswer,
    }),
    agedOut: z
      .array(agedOutDrumAnswer)
      .describe('Fit today, and past retest before the plan would burn them.'),
    deliveries: z.array(deliveryAnswer),
    draws: z.array(plannedDrawAnswer),
    slings: z.array(slingToCome),
    notReported: z
      .array(drawNotReportedAnswer)
      .describe('Planned draws of the last week that nobody has reported: usable still counts on them.'),
    remarks: z.array(z.string()),
    place: z.string(),
    ...setLevels,
    empties: z.number(),
  })
  .meta({ id: 'CacheAnswer', description: 'A cache as its page shows it: levels, stock, what lies ahead.' });
export type CacheAnswer = Answer<typeof cacheAnswer>;
