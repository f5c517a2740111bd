import { z } from 'zod';
import { type FlightReportBody, problemWords } from '../../http/flight-report.js';
import { instant, kg, lb } from '../field.js';
import { flightAnswer, flightLoad } from './flight.js';

/** By which means an event came to be written down. */
const means = z.enum(['screen', 'phone', 'radio', 'paper']);

/** As it was sent: what every report says, and what one of its kind says besides. */
const reportOf = <Kind extends string, Fields extends z.ZodRawShape>(kind: Kind, fields: Fields) =>
  z.strictObject({
    kind: z.literal(kind),
    flight: z.string(),
    happenedAt: z.string(),
    writtenAt: z.string(),
    means,
    witnesses: z.array(z.string()),
    by: z.string().exactOptional(),
    note: z.string().exactOptional(),
    ...fields,
  });

const loadReport = reportOf('load', {
  version: z.number(),
  checkCode: z.string().exactOptional(),
  totals: z.strictObject({
    load: z.strictObject({ bySheetLb: lb, byHandLb: lb }),
    takeOff: z.strictObject({ bySheetLb: lb, byAircraftLb: lb }),
  }),
  drums: z.array(
    z.strictObject({
      movement: z.string(),
      drum: z.string(),
      to: z.string(),
      position: z.string().exactOptional(),
      grossKg: kg.exactOptional(),
    }),
  ),
  bySoftFigures: z.boolean(),
  signed: z
    .strictObject({ by: z.string(), reason: z.string(), second: z.string().exactOptional() })
    .exactOptional(),
  doesNotHold: z.string().exactOptional(),
  allTheSame: z.boolean().exactOptional(),
});

const problemReport = reportOf('problem', {
  what: z.enum(problemWords),
  words: z.string().exactOptional(),
});

const reportAsSent: z.ZodType<FlightReportBody> = z.discriminatedUnion('kind', [
  loadReport,
  reportOf('take off', {}),
  reportOf('land', { place: z.string() }),
  reportOf('turn back', { place: z.string() }),
  reportOf('end elsewhere', { place: z.string() }),
  reportOf('refuse', { reason: z.string().exactOptional() }),
  reportOf('report', {}),
  problemReport,
]);

export const storedFlightReportAnswer = z
  .strictObject({
    id: z.string(),
    flightId: z.string(),
    kind: z.enum(['load', 'take off', 'land', 'turn back', 'end elsewhere', 'refuse', 'report', 'problem']),
    happenedAt: instant,
    receivedAt: instant,
    data: reportAsSent.describe('As it was sent.'),
    author: z.string().describe('Who reports; it stays so, whoever sends it.'),
    sentBy: z.string().describe('Whose session sent it first.'),
    accountId: z.string().nullable(),
    raised: z.array(z.string()).describe('What it leaves to be looked at.'),
  })
  .meta({
    id: 'StoredFlightReport',
    description: 'A report as somebody gave it: kept as it came, whatever became of it.',
  });

export const flightReportAnswer = z
  .strictObject({
    report: storedFlightReportAnswer,
    entered: z
      .boolean()
      .describe('False: a loading that may not be entered as loaded; it is kept, and there to be looked at.'),
    flight: flightAnswer.extend({ loads: z.array(flightLoad) }),
  })
  .meta({ id: 'FlightReportAnswer' });
