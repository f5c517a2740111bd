import { z } from 'zod';
import { type Answer, isoDate } from '../field.js';
import { surfaceReport } from '../planned.js';
import { flightState, surfaceState } from '../words.js';

export const touchedFlightAnswer = z
  .strictObject({
    flight: z.string(),
    state: flightState,
    date: isoDate,
    aircraft: z.string(),
    route: z.array(z.string()),
    drums: z.number(),
    drumsThatGo: z.number().nullable().describe('As many as may go by the report; null: all of them.'),
    breaks: z
      .string()
      .nullable()
      .describe('What it breaks that is not broken now; null: the flight stands as it is.'),
  })
  .meta({ id: 'TouchedFlight' });

export const touchedBookedAnswer = z
  .strictObject({
    flight: z.string(),
    date: isoDate,
    aircraft: z.string(),
    route: z.array(z.string()),
    purpose: z.string(),
    passengers: z.number(),
    breaks: z
      .string()
      .nullable()
      .describe('What forbids it that does not forbid it now; null: it stands as it is booked.'),
  })
  .meta({ id: 'TouchedBooked', description: 'A flight that flies anyway, no drum on it yet.' });

export const touchedAnswer = z
  .strictObject({
    place: z.string(),
    before: surfaceState.describe('What counts there today, now and with the report.'),
    after: surfaceState,
    outrankedBy: surfaceReport
      .nullable()
      .describe(
        'A report of a later time that is there already: it stands, and this one is kept beside it. Null: this one stands.',
      ),
    flights: z.array(touchedFlightAnswer),
    booked: z.array(touchedBookedAnswer),
    ifItLasts: z
      .array(z.strictObject({ flight: z.string(), date: isoDate }))
      .describe(
        'Of a soft or closed report without a last day: flights of later days that need a decision if it holds till then.',
      ),
  })
  .meta({ id: 'TouchedAnswer' });

export const touchedByChangeAnswer = z
  .strictObject({
    flights: z.array(touchedFlightAnswer).describe('That stand, and need a decision with the change.'),
    booked: z
      .array(touchedBookedAnswer)
      .describe('Without drums on them, that cannot be flown with the change.'),
  })
  .meta({ id: 'TouchedByChangeAnswer' });

export type TouchedByChangeAnswer = Answer<typeof touchedByChangeAnswer>;
