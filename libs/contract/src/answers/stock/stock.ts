import { z } from 'zod';
import { type Answer, instant, isoDate, litres } from '../field.js';
import {
  cacheFiguresAnswer,
  countHeldAgainst,
  lastCountAnswer,
  stockCacheInShortAnswer,
} from './cache-figures.js';
import { batchAnswer, countAnswer, standingDrumAnswer } from './standing.js';

export const placeFiguresAnswer = z
  .strictObject({
    sealedHeldDrums: z
      .number()
      .describe('Of the sealed drums, those that may not be used: held, and past retest without being held.'),
    sealedPastRetestDrums: z.number(),
    partUsedHeldDrums: z.number().describe('Of the part-used drums, those held.'),
    lastCount: countHeldAgainst.nullable(),
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

export const stockAtPlaceAnswer = placeFiguresAnswer
  .extend({
    asOf: instant,
    lastCount: lastCountAnswer.nullable(),
    drums: z.array(standingDrumAnswer),
    batches: z.array(batchAnswer).describe('Of these drums.'),
  })
  .meta({ id: 'StockAtPlace' });

export const stockPlaceAnswer = placeFiguresAnswer
  .extend({ lastCount: lastCountAnswer.nullable(), cache: stockCacheInShortAnswer.nullable() })
  .meta({ id: 'StockPlace' });

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

export const placeAsKnownAtAnswer = placeFiguresAnswer
  .extend({ asOf: z.string() })
  .meta({ id: 'PlaceAsKnownAt' });

export const stockDifferenceAnswer = z
  .strictObject({
    table: z.string(),
    row: z.string(),
    fromMovements: z.unknown().describe('As the movements make it; null: there should be no such row.'),
    kept: z.unknown().describe('As it is kept; null: there is no such row.'),
  })
  .meta({ id: 'StockDifference' });
