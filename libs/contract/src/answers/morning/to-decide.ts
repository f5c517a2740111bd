import { z } from 'zod';
import { standingHoldAnswer } from '../drums/holds.js';
import { clockTime, instant, isoDate, litres } from '../field.js';
import { protectedCache } from '../flights/flight-in-short.js';
import { shownProposalAnswer } from '../people/proposals.js';
import { flightState } from '../words.js';

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
    protects: protectedCache.nullable(),
  })
  .meta({
    id: 'DecideFlight',
    description:
      'A flight that waits for somebody: offered, or marked, or approved and past its hour without having been given.',
  });

export const decideBookedAnswer = z
  .strictObject({
    id: z.string(),
    date: isoDate,
    aircraft: z.string(),
    route: z.array(z.string()),
    purpose: z.string(),
    passengers: z.number(),
    needsDecision: z.string(),
    by: decideFlightAnswer.shape.by,
  })
  .meta({
    id: 'DecideBooked',
    description: 'A booked flight without drums that cannot be flown as it is booked.',
  });

export const unheardFlightAnswer = decideFlightAnswer
  .omit({ by: true, ifDeclined: true, protects: true })
  .meta({ id: 'UnheardFlight', description: 'A flight of a day that is over, offered to loaded still.' });

export const cacheBelowCriticalAnswer = z
  .strictObject({
    place: z.string(),
    date: isoDate.nullable().describe('The first day that ends below critical; null: it is below now.'),
    litres: litres.describe('Usable at the end of that day; below zero: what is asked for beyond the stock.'),
    criticalLitres: litres,
  })
  .meta({ id: 'CacheBelowCritical' });

export const cacheBelowMinimumAnswer = cacheBelowCriticalAnswer
  .omit({ criticalLitres: true })
  .extend({
    minimumLitres: litres,
    backOn: isoDate
      .nullable()
      .describe('The first day after it that ends at the minimum or above; null: none looked ahead does.'),
  })
  .meta({
    id: 'CacheBelowMinimum',
    description: '`date`: the first day that ends below minimum; null: it is below now.',
  });

export const openCallsAnswer = z
  .strictObject({
    hold: z.string(),
    of: standingHoldAnswer.shape.of,
    reason: z.string(),
    by: z.string(),
    at: instant,
    drums: z.number(),
    toCall: z.array(z.string()).describe('Codes of places and numbers of flights.'),
    called: z.number(),
  })
  .meta({ id: 'OpenCalls', description: 'A hold of which some have still to be told by radio.' });

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

export const decideProposalAnswer = z
  .strictObject({
    id: z.string(),
    subject: z.string(),
    act: z.string(),
    proposedAt: instant,
    signedBy: z.array(z.string()).describe('Those whose signature counts, by name, the first one first.'),
    stillToSign: shownProposalAnswer.shape.stillToSign,
    mayAgree: z.boolean().describe('Whether the person who asks may be the second.'),
  })
  .meta({ id: 'DecideProposal' });
