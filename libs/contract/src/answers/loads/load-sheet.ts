import { z } from 'zod';
import { type Answer, clockTime, inches, isoDate, kg, lb, litres } from '../field.js';
import { blindLegAnswer, sheetLegAnswer } from './sheet-leg.js';
import { sheetTieDownAnswer } from './tie-down.js';

export const sheetDrumAnswer = z
  .strictObject({
    position: z.string(),
    armIn: inches,
    number: z.string(),
    batch: z.string(),
    grossKg: kg,
    lb: lb,
    litres: litres,
    leaveAt: z.string().describe('Where it is to be left.'),
    offAfterLeg: z.number(),
    onHold: z.boolean().describe('It is held: neither to be loaded nor to be used.'),
  })
  .meta({ id: 'SheetDrum' });

export const sheetFlightAnswer = z
  .strictObject({
    id: z.string(),
    aircraft: z.string(),
    date: isoDate,
    departs: clockTime.describe('Local.'),
    pilot: z.string().nullable(),
    version: z.number().describe('From 1; a re-print of the same load keeps its version.'),
    replaces: z.number().nullable().describe('Null: the first.'),
    printedCodes: z
      .array(z.string())
      .describe('Check codes that sheets of this version were printed with; absent: none was.')
      .exactOptional(),
    notApproved: z.literal(true).describe('It is offered, and nobody has approved it.').exactOptional(),
  })
  .meta({ id: 'SheetFlight', description: 'Whose sheet it is.' });

export const sheetCargoAnswer = z
  .strictObject({
    name: z.string(),
    place: z.string().nullable().describe('Null: none given; then nothing of the balance can be judged.'),
    kg: kg,
    lb: lb,
    firstLeg: z.number(),
    lastLeg: z.number(),
  })
  .meta({ id: 'SheetCargo' });

export const loadSheetAnswer = z
  .strictObject({
    format: z.literal('drumline-sheet/1'),
    flight: sheetFlightAnswer,
    replacesWords: z
      .string()
      .nullable()
      .describe('"Version 3 replaces version 2: throw version 2 away."; null: no other paper of the flight.'),
    route: z.array(z.string()),
    drums: z.array(sheetDrumAnswer),
    cargo: z.array(sheetCargoAnswer),
    legs: z.array(sheetLegAnswer),
    notInBookWords: z
      .string()
      .nullable()
      .describe('"0913 is not in the book: 190.0 kg by the crew."; null: every drum is in the book.'),
    heldWords: z
      .string()
      .nullable()
      .describe('"Batch J27-041 is held: water found. Aboard: 0523."; null: no drum on it is held.'),
    fuelWords: z.string(),
    tieDown: sheetTieDownAnswer.nullable().describe('Null: no drum is aboard.'),
    particularsMissing: z
      .string()
      .nullable()
      .describe("Why the particulars are not in the operator's own fields; null: they are."),
    toleranceLb: lb,
    holds: z.boolean().describe('Weights and balance hold in every limit, and no rule refuses the load.'),
    faults: z.array(z.string()),
    assumptions: z.string(),
    cautions: z.array(z.string()),
    checkCode: z.string(),
    square: z.string().describe('Text of the code square.'),
  })
  .meta({
    id: 'LoadSheet',
    description:
      'One page on which a flight is loaded, flown and checked; every pound of it is whole and adds up as printed.',
  });

export const blindSheetAnswer = loadSheetAnswer
  .omit({ square: true })
  .extend({ legs: z.array(blindLegAnswer) })
  .meta({
    id: 'BlindSheet',
    description:
      'A load sheet whose totals of load and take-off weight are not told: they are compared with what somebody types.',
  });
export type BlindSheet = Answer<typeof blindSheetAnswer>;
