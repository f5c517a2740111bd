import { z } from 'zod';
import { clockTime, hours, instant, isoDate } from '../field.js';
import { confidence, surfaceState } from '../words.js';

export const windowFlightAnswer = z
  .strictObject({
    flight: z.string(),
    aircraft: z.string(),
    drums: z.number().describe("As many of its drums as may go by today's facts."),
    blockHours: hours,
    chance: z
      .number()
      .describe('Chance that the weather lets it reach every stop, by the odds of its half day.'),
    harmAvoided: z
      .number()
      .describe('Litre-days below minimum, and below critical once more, that it avoids.'),
    harmPerHour: z
      .number()
      .describe('By the hour flown, the chance that it goes counted in: what the order is by.'),
    protects: z
      .strictObject({
        place: z.string(),
        date: isoDate,
      })
      .nullable()
      .describe(
        "The first cache and day that fall below minimum when none of today's flights goes, and this one would help.",
      ),
  })
  .meta({
    id: 'WindowFlight',
    description:
      'A flight of today that has not left, and what it would be worth if it were the only one that gets away.',
  });

export const stripNowAnswer = z
  .strictObject({
    place: z.string(),
    name: z.string(),
    surface: surfaceState.nullable().describe('Null: unknown.'),
    counts: surfaceState.describe('What is planned on today.'),
    reportedAt: instant.nullable(),
    by: z.string().nullable(),
    reported: surfaceState.nullable(),
    staleAt: instant.nullable(),
    untilDate: isoDate.nullable(),
    radioTime: clockTime.nullable(),
    tailwindLimitKt: z.number().nullable(),
    stripClass: z.number().nullable(),
    drumsToday: z.number(),
    drumsADay: z.number().nullable(),
  })
  .meta({ id: 'StripNow', description: 'A strip as its column shows it.' });

export const fuelAtAnswer = z
  .strictObject({
    place: z.string(),
    usableLitres: z.number(),
    bookLitres: z.number(),
    heldLitres: z.number(),
    pastRetestLitres: z.number().describe('Past retest and not held.'),
    reserveLitres: z.number().describe('Of the usable litres, for a medevac only.'),
    reserveSetLitres: z.number().describe('What is to be kept for it; more than there is: some is missing.'),
    notReportedLitres: z.number().describe('Of the usable litres, planned as drawn by now and not reported.'),
    countedAt: instant.nullable(),
    confidence: confidence,
  })
  .meta({ id: 'FuelAt', description: 'What can be drawn at a place now: the rest for a medevac only.' });

export const fuelAtBaseAnswer = z
  .strictObject({
    place: z.string(),
    usableLitres: z.number(),
    usableDrums: z.number(),
    heldDrums: z.number(),
    pastRetestDrums: z.number(),
    bulkLitres: z.number(),
  })
  .meta({
    id: 'FuelAtBase',
    description: 'Filled drums at a base that may be used, those that may not, and the bulk.',
  });
