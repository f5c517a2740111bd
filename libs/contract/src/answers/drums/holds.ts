import { z } from 'zod';
import { instant, litres, wholeList } from '../field.js';
import { cacheLevel } from '../words.js';
import { notSeenAnswer, peopleWithDevice } from './not-seen.js';
import { inTheLedger, proposedMovement } from './reported.js';

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

export const placeEffectAnswer = z
  .strictObject({
    drums: z.number(),
    numbers: z.array(z.string()),
    levelAfter: cacheLevel.nullable().describe('Null: no levels are set for the place.'),
    radioScript: z.string().describe('To be read out, with the numbers read back.'),
    place: z.string(),
    usableLitresBefore: litres,
    usableLitresAfter: litres,
  })
  .meta({ id: 'PlaceEffect' });

export const flightEffectAnswer = z
  .strictObject({
    flight: z.string(),
    state: z.string().nullable().describe('Null: the ledger has heard of a flight that no plan has.'),
    isAboard: z.boolean(),
    numbers: z.array(z.string()),
    radioScript: z.string(),
  })
  .meta({ id: 'FlightEffect' });

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

export const setHoldAnswer = z
  .discriminatedUnion('outcome', [
    inTheLedger.extend({ consequence: holdEffectAnswer }),
    proposedMovement.extend({ consequence: holdEffectAnswer }),
  ])
  .meta({ id: 'SetHold' });

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

export const notHeardOfHoldAnswer = wholeList(notSeenAnswer)
  .extend({ calls: z.array(holdCallAnswer), peopleWithDevice })
  .meta({ id: 'NotHeardOfHold' });

export const latestReleaseAnswer = z
  .strictObject({
    release: z
      .strictObject({
        at: instant,
        by: z.array(z.string()).describe('Two people, the first one first.'),
        reason: z.string(),
        callBack: z
          .array(z.strictObject({ called: z.string(), radioScript: z.string() }))
          .describe('Places and flights that were told of the hold by radio, each with what to tell it now.'),
      })
      .nullable()
      .describe('Null: it was never released.'),
  })
  .meta({ id: 'LatestRelease' });

export const holdCallsAnswer = notHeardOfHoldAnswer.pick({ calls: true }).meta({ id: 'HoldCalls' });
