import { z } from 'zod';
import { type Answer, clockTime, instant, isoDate } from '../field.js';
import { awayFlightAnswer } from '../flights/away-flights.js';
import { slingRemedyAnswer } from '../projections/sling-remedies.js';
import { handoverAnswer } from './handover.js';
import { changedAnswer, notHeardAnswer } from './heard.js';
import {
  cacheBelowCriticalAnswer,
  cacheBelowMinimumAnswer,
  decideBookedAnswer,
  decideCaseAnswer,
  decideFlightAnswer,
  decideProposalAnswer,
  openCallsAnswer,
  unheardFlightAnswer,
} from './to-decide.js';
import { fuelAtAnswer, fuelAtBaseAnswer, stripNowAnswer, windowFlightAnswer } from './today.js';

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
    booked: z.array(decideBookedAnswer),
    didTheyFly: z
      .array(unheardFlightAnswer)
      .describe('Of days that are over: nobody has said whether they flew.'),
    fillsShort: z
      .array(
        z.strictObject({
          place: z.string(),
          short: z.array(z.string()).describe('What falls short, each a sentence.'),
          flights: z.array(z.string()),
          by: instant.describe('When the first of them leaves.'),
        }),
      )
      .describe('Bases that cannot fill in time what approved and given flights want.'),
    flightsStanding: z.number().describe('Flights of any state that stand from today on; 0: no plan stands.'),
    belowCritical: z
      .array(cacheBelowCriticalAnswer)
      .describe('Although every approved and offered flight flies.'),
    belowMinimum: z
      .array(cacheBelowMinimumAnswer)
      .describe('Below minimum and not below critical, although every approved and offered flight flies.'),
    slingRemedies: z
      .array(slingRemedyAnswer)
      .describe('Caches that fall short before a sling that feeds them.'),
    openCalls: z
      .array(openCallsAnswer)
      .describe('Holds of which somebody has still to be told by radio, the oldest first.'),
    cases: z.array(decideCaseAnswer),
    proposals: z.array(decideProposalAnswer),
    raised: z.array(
      z.strictObject({
        id: z.string(),
        mayHurt: z.boolean(),
        place: z.string().nullable(),
        what: z.string(),
        whatNext: z.string(),
      }),
    ),
    moreRaised: z
      .strictObject({ mayHurt: z.number(), rest: z.number() })
      .describe('How many more are raised than are listed here: those that may hurt, and the rest.'),
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
        lateMinutes: z
          .number()
          .describe('Past its hour by so many minutes and not given to its pilot; 0: still to come.'),
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
    bases: z.array(fuelAtBaseAnswer),
  })
  .meta({
    id: 'MorningAnswer',
    description:
      "The dispatcher's picture at one moment: what to decide, what has changed, who has not been heard from.",
  });
export type MorningAnswer = Answer<typeof morningAnswer>;
