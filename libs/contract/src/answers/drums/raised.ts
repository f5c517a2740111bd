import { z } from 'zod';
import { instant } from '../field.js';

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
  'holds nothing',
  'impossible figures',
  'unlike its batch',
  'delivery not as planned',
  'flight report',
  'load or problem',
]);

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

export const raisedNowAnswer = raisedAnswer
  .extend({
    raisedAt: instant
      .nullable()
      .describe('When the last of its movements came in; null: it is so now, whatever made it so.'),
    mayHurt: z.boolean().describe('It comes first: as long as nobody looks, it can hurt people.'),
    isSeen: z.boolean().describe('Somebody has looked at it as it reads now.'),
    lastAct: raisedActAnswer.nullable().describe('What was done about it last, by whom; null: nothing.'),
  })
  .meta({ id: 'RaisedNow' });
