import { z } from 'zod';
import { raisedAnswer } from './drums.js';
import { type Answer, instant, litres, millilitres, wholeList } from './field.js';
import { countedAnswer, movementAnswer } from './movement.js';
import { shownProposalAnswer } from './proposals.js';

export const standingHoldAnswer = z
  .strictObject({
    id: z
      .string()
      .nullable()
      .describe('Its movement, to ask who has not heard; null: a report of something unsound set it.'),
    of: z.union([
      z.strictObject({
        drum: z.string(),
      }),
      z.strictObject({
        batch: z.string(),
      }),
    ]),
    drums: z.number().describe('Drums with fuel that it takes out of use.'),
    litres: litres,
    places: z.array(z.string()).describe('Codes of the places where they stand.'),
    reason: z.string(),
    by: z.string(),
    at: instant,
  })
  .meta({ id: 'StandingHold', description: 'A hold that nobody has released.' });
export type StandingHold = Answer<typeof standingHoldAnswer>;

export const placeEffectAnswer = z
  .strictObject({
    drums: z.number(),
    numbers: z.array(z.string()),
    levelAfter: z
      .enum(['below minimum', 'below critical', 'enough'])
      .nullable()
      .describe('Null: no levels are set for the place.'),
    radioScript: z.string().describe('To be read out, with the numbers read back.'),
    place: z.string(),
    usableLitresBefore: litres,
    usableLitresAfter: litres,
  })
  .meta({ id: 'PlaceEffect' });
export type PlaceEffect = Answer<typeof placeEffectAnswer>;

export const flightEffectAnswer = z
  .strictObject({
    flight: z.string(),
    state: z.string().nullable().describe('Null: the ledger has heard of a flight that no plan has.'),
    isAboard: z.boolean(),
    numbers: z.array(z.string()),
    radioScript: z.string(),
  })
  .meta({ id: 'FlightEffect' });
export type FlightEffect = Answer<typeof flightEffectAnswer>;

export const notSeenAnswer = z
  .strictObject({
    person: z.string(),
    device: z.string(),
    lastSeenAt: instant,
  })
  .meta({ id: 'NotSeen' });
export type NotSeen = Answer<typeof notSeenAnswer>;

export const holdEffectAnswer = z
  .strictObject({
    drums: z.number(),
    litres: litres,
    places: z.array(placeEffectAnswer),
    belowMinimum: z.array(z.string()),
    belowCritical: z.array(z.string()),
    flights: z.array(flightEffectAnswer).describe('Flights that have drums of it aboard, or set aside.'),
    message: z.string().describe('For a text message to everybody.'),
    toHear: z
      .array(notSeenAnswer)
      .describe('Everybody in the field with a device, who therefore has to hear of it.'),
  })
  .meta({ id: 'HoldEffect' });
export type HoldEffect = Answer<typeof holdEffectAnswer>;

export const setHoldAnswer = z
  .discriminatedUnion('outcome', [
    z.strictObject({
      consequence: holdEffectAnswer,
      outcome: z.literal('in the ledger'),
      movement: movementAnswer,
      raised: z.array(raisedAnswer),
    }),
    z.strictObject({
      consequence: holdEffectAnswer,
      outcome: z.literal('proposed'),
      proposal: shownProposalAnswer,
    }),
  ])
  .meta({ id: 'SetHold' });
export type SetHold = Answer<typeof setHoldAnswer>;

export const holdCallAnswer = z
  .strictObject({
    called: z.string(),
    by: z.string(),
    at: instant,
  })
  .meta({
    id: 'HoldCall',
    description: 'A place, or the crew of a flight, that somebody has told of a hold by radio.',
  });
export type HoldCall = Answer<typeof holdCallAnswer>;

export const notHeardOfHoldAnswer = z
  .strictObject({
    calls: z.array(holdCallAnswer),
    next: z.null(),
    items: z.array(notSeenAnswer),
    peopleWithDevice: z
      .number()
      .describe('Of the field, with a device that is signed in; 0: the radio only.'),
  })
  .meta({ id: 'NotHeardOfHold' });
export type NotHeardOfHold = Answer<typeof notHeardOfHoldAnswer>;

export const holdCallsAnswer = z
  .strictObject({
    calls: z.array(holdCallAnswer),
  })
  .meta({ id: 'HoldCalls' });
export type HoldCalls = Answer<typeof holdCallsAnswer>;

export const listedCaseAnswer = z
  .strictObject({
    proposals: z.array(shownProposalAnswer),
    counted: countedAnswer.describe('The count that opened it, and the last one before it that was agreed.'),
    agreed: countedAnswer.nullable(),
    movementsSince: z
      .array(movementAnswer)
      .describe('What happened at the place since the last agreed count.'),
    notHeardFrom: z.array(notSeenAnswer).describe('Whose phones may hold a report that explains it.'),
    peopleWithDevice: z
      .number()
      .describe('Of the field, with a device that is signed in; 0: the radio only.'),
    count: z.string().describe('Id of the count that opened it.'),
    place: z.string(),
    countedBy: z.array(z.string()),
    countedMillilitres: millilitres,
    bookMillilitres: millilitres.describe(
      'The book at the moment of the count, with everything known today.',
    ),
    differenceMillilitres: z.number().describe('Count less book: negative, less was found.'),
    toleranceMillilitres: z.number(),
  })
  .meta({ id: 'ListedCase', description: 'With the ways of closing it that wait for a second person.' });
export type ListedCase = Answer<typeof listedCaseAnswer>;

export const differenceCause = z.enum(['recount', 'missing report', 'spill', 'theft', 'unknown']);
export type DifferenceCause = Answer<typeof differenceCause>;

export const caseClosingAnswer = z
  .strictObject({
    count: z.string(),
    cause: differenceCause,
    words: z.string(),
    by: z.string(),
    second: z.string(),
    at: instant,
  })
  .meta({
    id: 'CaseClosing',
    description: 'What two people found; the litres themselves move by entries of their own.',
  });
export type CaseClosing = Answer<typeof caseClosingAnswer>;

export const closedCaseAnswer = z
  .strictObject({
    closing: caseClosingAnswer,
    counted: countedAnswer.describe('The count that opened it.'),
  })
  .meta({ id: 'ClosedCase' });
export type ClosedCase = Answer<typeof closedCaseAnswer>;

export const cacheLevelsAnswer = wholeList(
  z.strictObject({
    place: z.string(),
    level: z.enum(['low', 'enough']),
  }),
).meta({ id: 'CacheLevels' });
export type CacheLevels = Answer<typeof cacheLevelsAnswer>;
