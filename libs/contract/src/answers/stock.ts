import { z } from 'zod';
import { type Answer, hours, instant, isoDate, litres } from './field.js';
import { countAnswer, standingDrumAnswer } from './standing.js';

export const lastCountAnswer = z
  .strictObject({
    count: countAnswer,
    toleranceLitres: litres,
    verdict: z.enum(['accepted', 'lower', 'higher']),
    countedLitres: litres,
    ageHours: hours,
  })
  .meta({ id: 'LastCount' });
export type LastCount = Answer<typeof lastCountAnswer>;

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
export type AgedOutDrum = Answer<typeof agedOutDrumAnswer>;

export const cacheFiguresAnswer = z
  .strictObject({
    level: z.enum(['below minimum', 'below critical', 'enough']),
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
    minimumLitres: litres,
    criticalLitres: litres,
    medevacReserveLitres: litres.describe('The bottom slice of the minimum: no routine draw goes into it.'),
    capacityDrums: z.number(),
  })
  .meta({ id: 'CacheFigures' });
export type CacheFigures = Answer<typeof cacheFiguresAnswer>;

export const placeFiguresAnswer = z
  .strictObject({
    sealedHeldDrums: z
      .number()
      .describe('Of the sealed drums, those that may not be used: held, and past retest without being held.'),
    sealedPastRetestDrums: z.number(),
    lastCount: z
      .strictObject({
        count: countAnswer,
        toleranceLitres: litres,
        verdict: z.enum(['accepted', 'lower', 'higher']),
        countedLitres: litres,
      })
      .nullable(),
    cache: cacheFiguresAnswer.nullable().describe('Null: not a cache, no levels are set for it.'),
    place: z.string(),
    remarks: z.array(z.string()).describe('Differences to look at, in plain sentences.'),
    bookLitres: litres,
    countShortfallLitres: litres.describe(
      'Book less the last count where that is lower and outside the tolerance; else 0.',
    ),
    heldLitres: litres,
    pastRetestLitres: litres.describe('Past retest and not held.'),
    usableLitres: litres,
    countsNotUsed: z.array(countAnswer).describe('Later than the picture.'),
    sealedDrums: z.number(),
    emptyDrums: z.number(),
    partUsedDrums: z.number(),
  })
  .meta({
    id: 'PlaceFigures',
    description: 'Book, count and usable of a place, and where they lead without another delivery.',
  });
export type PlaceFigures = Answer<typeof placeFiguresAnswer>;

export const stockAtPlaceAnswer = placeFiguresAnswer
  .extend({
    asOf: instant,
    lastCount: lastCountAnswer.nullable(),
    drums: z.array(standingDrumAnswer),
  })
  .meta({ id: 'StockAtPlace' });
export type StockAtPlace = Answer<typeof stockAtPlaceAnswer>;

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
export type StockCacheInShort = Answer<typeof stockCacheInShortAnswer>;

export const stockPlaceAnswer = placeFiguresAnswer
  .extend({ lastCount: lastCountAnswer.nullable(), cache: stockCacheInShortAnswer.nullable() })
  .meta({ id: 'StockPlace' });
export type StockPlace = Answer<typeof stockPlaceAnswer>;

export const stockAnswer = z
  .strictObject({
    asOf: instant,
    firstDay: isoDate,
    days: z.number(),
    items: z.array(stockPlaceAnswer),
    next: z.null(),
  })
  .meta({ id: 'StockAnswer' });
export type StockAnswer = Answer<typeof stockAnswer>;

export const stockAsKnownAtAnswer = z
  .strictObject({
    asOf: z.string(),
    items: z.array(placeFiguresAnswer),
    next: z.null(),
  })
  .meta({ id: 'StockAsKnownAt' });
export type StockAsKnownAt = Answer<typeof stockAsKnownAtAnswer>;

export const stockDifferenceAnswer = z
  .strictObject({
    table: z.string(),
    row: z.string(),
    fromMovements: z.unknown().describe('As the movements make it; null: there should be no such row.'),
    kept: z.unknown().describe('As it is kept; null: there is no such row.'),
  })
  .meta({ id: 'StockDifference' });
export type StockDifference = Answer<typeof stockDifferenceAnswer>;

export const placeAsKnownAtAnswer = placeFiguresAnswer
  .extend({ asOf: z.string() })
  .meta({ id: 'PlaceAsKnownAt' });
export type PlaceAsKnownAt = Answer<typeof placeAsKnownAtAnswer>;
