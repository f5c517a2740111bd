import { z } from 'zod';
import { kg, lb, nm } from '../field.js';
import { surfaceState } from '../words.js';
import { particularAnswer, passengersAndDrumsAnswer } from './approvals.js';
import { rowBalanceAnswer } from './balance.js';
import { goBackAnswer } from './go-back.js';

export const weightRowAnswer = z
  .strictObject({
    label: z.string(),
    kind: z
      .enum(['start', 'plus', 'minus', 'sum', 'again'])
      .describe('A `sum` is what stands above it, added up; `again` repeats a weight against another limit.'),
    lb: lb,
    limit: z
      .strictObject({
        lb: lb,
        spareLb: lb,
        holds: z.boolean(),
      })
      .nullable(),
    forbiddenBy: z
      .string()
      .nullable()
      .describe(
        'Why there is no limit to hold it against: "closed when soft"; null: there is one, or none is needed.',
      ),
    cg: rowBalanceAnswer.nullable(),
  })
  .meta({ id: 'WeightRow', description: 'One row of the weights of a leg, in whole pounds.' });

export const sheetItemAnswer = z
  .strictObject({
    name: z.string().describe('"0447 in R1L", "stores in NET1".'),
    kg: kg.describe('Gross for a drum.'),
    tareKg: kg.nullable().describe('Null: not a drum.'),
  })
  .meta({ id: 'SheetItem', description: 'One row of the load as it stands on the sheet.' });

export const sheetTotalsAnswer = z
  .strictObject({
    items: z.array(sheetItemAnswer),
    loadKg: kg,
    loadLb: lb,
    takeoffLb: lb,
    plannedLoadLb: lb.describe('With every drum at its planning weight.'),
    plannedTakeoffLb: lb,
    fuelLb: lb,
    taxiFuelLb: lb,
    tripFuelLb: lb.describe('From take-off to landing.'),
    operatingLb: lb,
    roundingWords: z.string().nullable().describe('Why the kg total is not quite the lb total; null: it is.'),
  })
  .meta({
    id: 'SheetTotals',
    description: 'The figures of the two pairs of totals on one leg, and what is needed to compare them.',
  });

export const sheetLegAnswer = z
  .strictObject({
    from: z.string(),
    to: z.string(),
    distanceNm: nm,
    surface: surfaceState.describe('At `to`.'),
    passengers: z.number(),
    rows: z.array(weightRowAnswer),
    totals: sheetTotalsAnswer,
    allowedTakeoffLb: lb.describe(
      'Most that this flight may take off with: its own limits, and those of landing and zero fuel with its fuel.',
    ),
    binds: z.string().describe('"LOR strip landing limit, 169 lb spare. Drum positions 6 of 6."'),
    goBack: goBackAnswer,
    particulars: z.array(particularAnswer),
    passengersAndDrums: passengersAndDrumsAnswer,
  })
  .meta({ id: 'SheetLeg' });

export const blindLegAnswer = sheetLegAnswer.omit({ rows: true, totals: true, allowedTakeoffLb: true });
