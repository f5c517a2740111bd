import { z } from 'zod';
import { type Answer, instant, isoDate, kg, litres, millilitres } from './field.js';
import { movementAnswer } from './movement.js';
import { holdAnswer } from './standing.js';

/** What is in it; where it is and whether it may be used are separate facts. */
export const drumContent = z.enum([
  'filled sealed',
  'part used',
  'clean empty',
  'empty with residue',
  'drained',
]);
export type DrumContent = Answer<typeof drumContent>;

export const drumNowAnswer = z
  .strictObject({
    litres: litres,
    held: holdAnswer.nullable().describe("Its own hold, or its batch's."),
    condemned: holdAnswer.nullable(),
    retestDue: isoDate.nullable().describe('Last day of use; null: its batch is not known.'),
    number: z.string().describe('Its number; the provisional one as long as no other is known.'),
    batch: z.string().nullable().describe('Null: nobody has said yet.'),
    content: drumContent,
    openedAt: instant.nullable(),
    tareKg: kg.nullable(),
    grossKg: kg.nullable(),
    where: z.discriminatedUnion('kind', [
      z.strictObject({
        kind: z.literal('at'),
        place: z.string(),
      }),
      z.strictObject({
        kind: z.literal('aboard'),
        flight: z.string(),
        leg: z.number(),
        from: z.string(),
      }),
      z.strictObject({
        kind: z.literal('unknown'),
        lastSeenAt: z.string().nullable(),
      }),
    ]),
    alsoKnownAs: z.array(z.string()).describe('Provisional numbers that were joined to it.'),
    lastDip: z
      .strictObject({
        at: instant,
        by: z.string(),
        millilitres: millilitres,
        bookMillilitres: millilitres.describe('The book of the drum at that moment.'),
      })
      .nullable(),
  })
  .meta({
    id: 'DrumNow',
    description: 'A drum as it is now: where it is, what is in it, whether it may be used.',
  });
export type DrumNow = Answer<typeof drumNowAnswer>;

export const historyEntryAnswer = z
  .strictObject({
    movement: movementAnswer,
    reversedBy: z.array(z.string()).describe('Ids of the standing corrections of it; empty: it stands.'),
    sameAs: z
      .string()
      .nullable()
      .describe('The movement that it is another report of; null: it is one of its own.'),
    witnesses: z.array(z.string()).describe('Everyone who reported or saw it, over all its reports.'),
  })
  .meta({ id: 'HistoryEntry' });
export type HistoryEntry = Answer<typeof historyEntryAnswer>;

/** What a ledger leaves to be looked at; nothing of it was refused. */
export const raisedKind = z.enum([
  'not in the book',
  'already in the book',
  'not there',
  'not aboard',
  'aboard two flights',
  'loaded before filled',
  'filled over fuel',
  'no fuel in it',
  'already open',
  'held drum loaded',
  'held drum used',
  'released by one person',
  'more than was in it',
  'litres differ',
  'batches mixed',
  'reports differ',
  'joined twice',
  'clock ahead',
  'corrects an unknown movement',
  'draws look alike',
  'over capacity',
  'not in the territory',
  'unknown batch',
  'impossible figures',
  'delivery not as planned',
  'flight report',
]);
export type RaisedKind = Answer<typeof raisedKind>;

export const raisedAnswer = z
  .strictObject({
    id: z.string().describe('Kind and movements; stable from one replay to the next.'),
    kind: raisedKind,
    drum: z.string().nullable(),
    place: z.string().nullable(),
    flight: z.string().nullable(),
    movements: z.array(z.string()).describe('Ids of the movements concerned.'),
    what: z.string(),
    whatNext: z.string(),
  })
  .meta({
    id: 'Raised',
    description: 'Something to look at: a value, with the same id whenever it is found again.',
  });
export type Raised = Answer<typeof raisedAnswer>;

export const drumLifeAnswer = drumNowAnswer
  .extend({
    timeline: z.array(historyEntryAnswer).describe('In the order in which it happened.'),
    batchTimeline: z.array(historyEntryAnswer).describe('Holds, releases and retests of its whole batch.'),
    raised: z.array(raisedAnswer),
  })
  .meta({ id: 'DrumLife' });
export type DrumLife = Answer<typeof drumLifeAnswer>;

export const raisedActAnswer = z
  .strictObject({
    id: z.string(),
    what: z.string().describe('How the thing read then.'),
    person: z.string(),
    at: instant,
    raised: z.string(),
    act: z.enum(['seen', 'open again']),
    words: z.string(),
  })
  .meta({
    id: 'RaisedAct',
    description: 'Somebody has looked at a raised thing, or wants it looked at again.',
  });
export type RaisedAct = Answer<typeof raisedActAnswer>;

export const raisedNowAnswer = raisedAnswer
  .extend({
    raisedAt: instant
      .nullable()
      .describe('When the last of its movements came in; null: it is so now, whatever made it so.'),
    isSeen: z.boolean().describe('Somebody has looked at it as it reads now.'),
    lastAct: raisedActAnswer.nullable().describe('What was done about it last, by whom; null: nothing.'),
  })
  .meta({ id: 'RaisedNow' });
export type RaisedNow = Answer<typeof raisedNowAnswer>;
