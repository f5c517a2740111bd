import { z } from 'zod';
import { instant, isoDate, kg, litres, millilitres } from '../field.js';
import { holdAnswer } from '../stock/standing.js';
import { movementAnswer } from './movement.js';
import { raisedAnswer } from './raised.js';

/** What is in it; where it is and whether it may be used are separate facts. */
export const drumContent = z.enum([
  'filled sealed',
  'part used',
  'clean empty',
  'empty with residue',
  'drained',
]);

/** Where a drum is; nobody may know. */
export const drumWhere = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('at'), place: z.string() }),
  z.strictObject({ kind: z.literal('aboard'), flight: z.string(), leg: z.number(), from: z.string() }),
  z.strictObject({ kind: z.literal('unknown'), lastSeenAt: z.string().nullable() }),
]);

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
    where: drumWhere,
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

export const drumLifeAnswer = drumNowAnswer
  .extend({
    timeline: z.array(historyEntryAnswer).describe('In the order in which it happened.'),
    batchTimeline: z.array(historyEntryAnswer).describe('Holds, releases and retests of its whole batch.'),
    raised: z.array(raisedAnswer),
  })
  .meta({ id: 'DrumLife' });
