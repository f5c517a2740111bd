import { z } from 'zod';
import { type Answer, clockTime, hours, instant, isoDate, litres } from './field.js';
import { awayFlightAnswer } from './flown-flights.js';
import { handoverAnswer } from './handover.js';
import { slingRemedyAnswer } from './projections.js';
import { flightState, shortLevel, surfaceState } from './words.js';

export const decideFlightAnswer = z
  .strictObject({
    id: z.string(),
    state: flightState,
    needsDecision: z.string().nullable(),
    by: instant.describe('The latest moment at which it makes sense to decide.'),
    date: isoDate,
    departs: clockTime,
    aircraft: z.string(),
    pilot: z.string().nullable(),
    route: z.array(z.string()),
    drums: z.number(),
    ifDeclined: z.string(),
    protects: z
      .strictObject({
        place: z.string(),
        date: isoDate,
        level: shortLevel,
      })
      .nullable(),
  })
  .meta({ id: 'DecideFlight', description: 'A flight that waits for somebody: offered, or marked.' });
export type DecideFlight = Answer<typeof decideFlightAnswer>;

export const cacheBelowCriticalAnswer = z
  .strictObject({
    place: z.string(),
    date: isoDate.nullable().describe('The first day that ends below critical; null: it is below now.'),
    litres: litres.describe('Usable at the end of that day; below zero: what is asked for beyond the stock.'),
    criticalLitres: litres,
  })
  .meta({ id: 'CacheBelowCritical' });
export type CacheBelowCritical = Answer<typeof cacheBelowCriticalAnswer>;

export const decideCaseAnswer = z
  .strictObject({
    count: z.string(),
    place: z.string(),
    at: instant,
    countedBy: z.array(z.string()),
    countedLitres: z.number(),
    bookLitres: z.number(),
    toleranceLitres: z.number(),
    proposed: z.number().describe('Ways of closing it that wait for a second person.'),
  })
  .meta({ id: 'DecideCase' });
export type DecideCase = Answer<typeof decideCaseAnswer>;

export const decideProposalAnswer = z
  .strictObject({
    id: z.string(),
    subject: z.string(),
    act: z.string(),
    proposedAt: instant,
    agreedBy: z.array(z.string()),
    mayAgree: z.boolean().describe('Whether the person who asks may be the second.'),
  })
  .meta({ id: 'DecideProposal' });
export type DecideProposal = Answer<typeof decideProposalAnswer>;

export const changedAnswer = z
  .strictObject({
    at: instant.describe("When it came in, by the territory's clock."),
    writtenAt: instant.nullable().describe('When it was written down, where that was earlier.'),
    what: z.string(),
    source: z.string().describe('Who, and by which means.'),
  })
  .meta({ id: 'Changed' });
export type Changed = Answer<typeof changedAnswer>;

export const notHeardAnswer = z
  .strictObject({
    caches: z.array(
      z.strictObject({
        place: z.string(),
        countedAt: instant.nullable(),
        why: z.array(z.string()),
      }),
    ),
    phones: z.array(
      z.strictObject({
        person: z.string(),
        hoursSilent: z.number(),
      }),
    ),
    crews: z.array(
      z.strictObject({
        pilot: z.string().nullable(),
        flight: z.string(),
        state: flightState,
        expectedAt: instant.describe('When a word was to come.'),
        what: z.enum(['not loaded', 'not off', 'not back', 'drums not reported']),
      }),
    ),
  })
  .meta({ id: 'NotHeard' });
export type NotHeard = Answer<typeof notHeardAnswer>;

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
export type WindowFlight = Answer<typeof windowFlightAnswer>;

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
export type StripNow = Answer<typeof stripNowAnswer>;

export const fuelAtAnswer = z
  .strictObject({
    place: z.string(),
    usableLitres: z.number(),
    reserveLitres: z.number(),
    countedAt: instant.nullable(),
    confidence: z.enum(['high', 'medium', 'low']),
  })
  .meta({ id: 'FuelAt', description: 'What can be drawn at a place now: the rest for a medevac only.' });
export type FuelAt = Answer<typeof fuelAtAnswer>;

export const morningAnswer = z
  .strictObject({
    asOf: instant,
    today: isoDate,
    since: instant.describe('What has changed is told from here on.'),
    handedOverAt: instant
      .nullable()
      .describe('When the last handover was signed for in full; null: none was.'),
    handover: handoverAnswer
      .nullable()
      .describe('A handover that nobody has taken over yet, with what is signed for and what is not.'),
    flights: z.array(decideFlightAnswer),
    flightsStanding: z.number().describe('Flights of any state that stand from today on; 0: no plan stands.'),
    belowCritical: z
      .array(cacheBelowCriticalAnswer)
      .describe('Although every approved and offered flight flies.'),
    slingRemedies: z
      .array(slingRemedyAnswer)
      .describe('Caches that fall short before a sling that feeds them.'),
    cases: z.array(decideCaseAnswer),
    proposals: z.array(decideProposalAnswer),
    raised: z.array(
      z.strictObject({
        id: z.string(),
        what: z.string(),
        whatNext: z.string(),
      }),
    ),
    changed: z.array(changedAnswer),
    notHeard: notHeardAnswer,
    oneWindow: z.array(windowFlightAnswer),
    strips: z.array(stripNowAnswer),
    away: z.array(awayFlightAnswer),
    overdueRule: z
      .strictObject({
        afterMinutes: z.number(),
        reference: z.string(),
      })
      .nullable()
      .describe(
        "What the operator's rule for a flight that is not back refers to; null: no minutes are set.",
      ),
    firstTakeOff: z
      .strictObject({
        at: clockTime,
        flight: z.string(),
        aircraft: z.string(),
      })
      .nullable(),
    worstOdds: z
      .strictObject({
        place: z.string(),
        morningCancel: z.number(),
        afternoonCancel: z.number(),
      })
      .nullable(),
    fuel: z.array(fuelAtAnswer),
    bases: z.array(
      z.strictObject({
        place: z.string(),
        bulkLitres: z.number(),
      }),
    ),
  })
  .meta({
    id: 'MorningAnswer',
    description:
      "The dispatcher's picture at one moment: what to decide, what has changed, who has not been heard from.",
  });
export type MorningAnswer = Answer<typeof morningAnswer>;
