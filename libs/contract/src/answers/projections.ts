import { z } from 'zod';
import { scenarioSchema } from '../scenario/scenario-schema.js';
import { type Answer, cents, hours, instant, isoDate, litres } from './field.js';
import { countAnswer } from './standing.js';
import { agedOutDrumAnswer } from './stock.js';

export const cacheStockAnswer = z
  .strictObject({
    bookLitres: litres,
    countShortfallLitres: litres,
    heldLitres: litres,
    pastRetestLitres: litres,
    usableLitres: litres,
    drawableLitres: litres,
    level: z.enum(['below minimum', 'below critical', 'enough']),
    isOverCapacity: z.boolean(),
    sealedDrums: z.number(),
    partUsedDrums: z.number(),
    emptyDrums: z.number(),
    lastCount: z
      .strictObject({
        count: countAnswer,
        ageHours: hours,
        toleranceLitres: litres,
        verdict: z.enum(['accepted', 'lower', 'higher']),
        countedLitres: litres,
      })
      .nullable()
      .describe(
        '`countedLitres`: as it was written down; `count.litres`: carried forward by what has moved since.',
      ),
    confidence: z.enum(['high', 'medium', 'low']),
    why: z.array(z.string()).describe('What keeps it from being high, each a sentence; empty: nothing.'),
  })
  .meta({ id: 'CacheStockAnswer' });
export type CacheStockAnswer = Answer<typeof cacheStockAnswer>;

export const levelsAnswer = z
  .strictObject({
    usableLitres: z.array(litres),
    lowest: z
      .strictObject({ litres: litres, day: z.number() })
      .describe('At the end of a day, and the first such day: the lowest level that every page shows.'),
    bookLitres: z.array(litres),
    standingLitres: z.array(litres).describe("After the day's landings, before anything leaves."),
    unmetLitres: z.array(litres),
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

/** State of a flight that a plan counts with. */
export const standingState = z.enum([
  'loaded',
  'closed',
  'offered',
  'approved',
  'given',
  'away',
  'home',
  'reported',
]);
export type StandingState = Answer<typeof standingState>;

export const deliveryAnswer = z
  .strictObject({
    flight: z.string(),
    drums: z.number(),
    litres: z.number(),
    date: isoDate,
    state: standingState,
    half: z.enum(['morning', 'afternoon']),
    needsDecision: z
      .string()
      .nullable()
      .describe('Why somebody has to decide on it; null: nothing to decide.'),
  })
  .meta({ id: 'Delivery', description: 'Drums that a flight is to set down at a cache.' });
export type Delivery = Answer<typeof deliveryAnswer>;

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
export type PlannedDraw = Answer<typeof plannedDrawAnswer>;

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
    slings: z.array(scenarioSchema.shape.slings.element),
    remarks: z.array(z.string()),
    place: z.string(),
    minimumLitres: litres,
    criticalLitres: litres,
    medevacReserveLitres: litres.describe('The bottom slice of the minimum: no routine draw goes into it.'),
    capacityDrums: z.number(),
    empties: z.number(),
  })
  .meta({ id: 'CacheAnswer', description: 'A cache as its page shows it: levels, stock, what lies ahead.' });
export type CacheAnswer = Answer<typeof cacheAnswer>;

export const lowestLevelAnswer = z
  .strictObject({
    date: isoDate,
    litres: litres,
  })
  .meta({ id: 'LowestLevel' });
export type LowestLevel = Answer<typeof lowestLevelAnswer>;

export const lowestLevelsAnswer = z
  .strictObject({
    place: z.string(),
    minimumLitres: litres,
    before: lowestLevelAnswer,
    after: lowestLevelAnswer,
  })
  .meta({ id: 'LowestLevels', description: 'The lowest evening of a cache among those that differ.' });
export type LowestLevels = Answer<typeof lowestLevelsAnswer>;

export const slingWorkAnswer = z
  .strictObject({
    helicopter: z.string(),
    lifts: z.number().describe('Out with a load and back, so many times.'),
    hours: hours.nullable().describe('Null: the operator has set no speed under a sling for it.'),
    litres: litres.nullable().describe('For these hours; in no level, as far as no task has them.'),
  })
  .meta({ id: 'SlingWork', description: 'What a sling asks of its helicopter.' });
export type SlingWork = Answer<typeof slingWorkAnswer>;

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
export type SlingMoved = Answer<typeof slingMovedAnswer>;

export const slingRemedyAnswer = z
  .strictObject({
    kept: z
      .strictObject({
        id: z.string(),
        version: z.number(),
        data: scenarioSchema.shape.slings.element,
      })
      .nullable()
      .describe('The line of the programme as it is kept, whole; null: it is not kept like that yet.'),
    place: z.string(),
    shortOn: isoDate.describe('The first day that ends below the minimum, and what is usable that evening.'),
    shortLitres: litres,
    minimumLitres: litres,
    criticalLitres: litres,
    sling: scenarioSchema.shape.slings.element.describe('As it is planned.'),
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

export const projectionsAnswer = z
  .strictObject({
    items: z.array(cacheAnswer),
    slingRemedies: z.array(slingRemedyAnswer),
    next: z.null(),
    asOf: instant,
    firstDay: isoDate,
    dates: z.array(isoDate).describe('Day 1 and on: figures by day have one entry more, index 0 is now.'),
    fillLitres: litres,
    serviceLevelPercent: z.number(),
    laterIdeas: z
      .number()
      .describe('Flights of the standing plan later than those it offered: no level counts them.'),
    notHeardFrom: z
      .array(
        z.strictObject({
          person: z.string(),
          device: z.string(),
          lastSeenAt: instant,
        }),
      )
      .describe('People of the field whose phones may hold reports.'),
  })
  .meta({
    id: 'ProjectionsAnswer',
    description: 'Answer of GET /api/projections: every cache and where its stock leads.',
  });
export type ProjectionsAnswer = Answer<typeof projectionsAnswer>;

export const cacheCourseAnswer = z
  .strictObject({
    levels: levelsAnswer,
    minimumLitres: litres,
    criticalLitres: litres,
    medevacReserveLitres: litres.describe('The bottom slice of the minimum: no routine draw goes into it.'),
    capacityDrums: z.number(),
  })
  .meta({
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

export const projectionAnswer = z
  .strictObject({
    asOf: instant,
    firstDay: isoDate,
    dates: z.array(isoDate).describe('Day 1 and on: figures by day have one entry more, index 0 is now.'),
    fillLitres: litres,
    serviceLevelPercent: z.number(),
    laterIdeas: z
      .number()
      .describe('Flights of the standing plan later than those it offered: no level counts them.'),
    notHeardFrom: z
      .array(
        z.strictObject({
          person: z.string(),
          device: z.string(),
          lastSeenAt: instant,
        }),
      )
      .describe('People of the field whose phones may hold reports.'),
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
    slings: z.array(scenarioSchema.shape.slings.element),
    remarks: z.array(z.string()),
    place: z.string(),
    minimumLitres: litres,
    criticalLitres: litres,
    medevacReserveLitres: litres.describe('The bottom slice of the minimum: no routine draw goes into it.'),
    capacityDrums: z.number(),
    empties: z.number(),
  })
  .meta({ id: 'ProjectionAnswer', description: 'Answer of GET /api/projections/:place.' });
export type ProjectionAnswer = Answer<typeof projectionAnswer>;
