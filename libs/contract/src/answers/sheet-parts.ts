import { z } from 'zod';
import { type Answer, clockTime, inches, isoDate, kg, kt, lb, litres, nm } from './field.js';
import { authorityApprovalAnswer, particularAnswer, sheetItemAnswer, tieDownAnswer } from './load-parts.js';
import { surfaceState } from './words.js';

export const latestLeaveAnswer = z
  .strictObject({
    from: z.string(),
    at: clockTime.nullable(),
    setBy: z
      .strictObject({
        place: z.string(),
        landBy: clockTime.nullable(),
      })
      .describe('The landing that sets the time, and by when it must be made.'),
  })
  .meta({
    id: 'LatestLeave',
    description:
      'Latest time to leave a place so that this leg and all that follow land in time; null: it is too late all day.',
  });
export type LatestLeave = Answer<typeof latestLeaveAnswer>;

export const leaveAgainAnswer = z
  .strictObject({
    place: z.string(),
    surface: z.string(),
    arrivalLb: lb.describe('As the sheet adds it.'),
    limitLb: lb.nullable().describe('Null: no take-off there in that state.'),
    overLb: lb.nullable().describe('Negative: room. Null with the limit.'),
    canLeaveLoaded: z.boolean(),
    drumsOff: z
      .array(z.string())
      .nullable()
      .describe('Drums to take off to leave again, nearest the door first; null: not even without a drum.'),
    words: z.string(),
  })
  .meta({
    id: 'LeaveAgain',
    description:
      'Unload or stay, with named drums: whether the aeroplane could leave as it arrives, and what must come out if not.',
  });
export type LeaveAgain = Answer<typeof leaveAgainAnswer>;

export const ifSoftAnswer = z
  .strictObject({
    place: z.string(),
    take: z.number().nullable().describe('Drums for that place that still go; null: do not go.'),
    leave: z.array(z.string()).describe('Drums to leave at the base.'),
    moves: z
      .array(z.string())
      .describe('Drums that must change position once those are left, "0449 to R1L".'),
    landsLb: lb.nullable(),
    standing: z
      .array(
        z.strictObject({
          number: z.string(),
          position: z.string(),
        }),
      )
      .describe('Where the drums that go stand then; empty: do not go.'),
    words: z.string(),
  })
  .meta({
    id: 'IfSoft',
    description: 'What to do when a strip turns out soft: decided with the plan, used without a radio.',
  });
export type IfSoft = Answer<typeof ifSoftAnswer>;

export const alternateAnswer = z
  .strictObject({
    place: z.string(),
    drums: z.number(),
    roomDrums: z.number(),
    landingLb: lb,
    fuelLb: lb,
    whyNot: z.string().nullable().describe('Null: it will do.'),
    words: z.string().describe('"CIN, 4 drums, room 28".'),
  })
  .meta({ id: 'Alternate', description: 'An alternate looked at with the load aboard.' });
export type Alternate = Answer<typeof alternateAnswer>;

export const goBackAnswer = z
  .strictObject({
    place: z.string(),
    tailwindLimitKt: kt.nullable().describe('Null: not given for the place.'),
    oneWay: z.boolean(),
    committalPoint: z.string().nullable(),
    latestLeave: latestLeaveAnswer,
    leaveAgain: leaveAgainAnswer.nullable().describe('Null at the last landing.'),
    leaveAgainSoft: leaveAgainAnswer.nullable(),
    ifSoft: ifSoftAnswer.nullable().describe('Null where no drum is for this place.'),
    alternates: z.array(alternateAnswer),
    lines: z.array(z.string()).describe('The lines as they stand on phone and paper, in this order.'),
  })
  .meta({
    id: 'GoBack',
    description: 'What is decided the evening before about the landing at the end of one leg.',
  });
export type GoBack = Answer<typeof goBackAnswer>;

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
  })
  .meta({ id: 'SheetDrum' });
export type SheetDrum = Answer<typeof sheetDrumAnswer>;

export const sheetFlightAnswer = z
  .strictObject({
    id: z.string(),
    aircraft: z.string(),
    date: isoDate,
    departs: clockTime.describe('Local.'),
    pilot: z.string().nullable(),
    version: z.number().describe('From 1; a re-print of the same load keeps its version.'),
    replaces: z.number().nullable().describe('Null: the first.'),
  })
  .meta({ id: 'SheetFlight', description: 'Whose sheet it is.' });
export type SheetFlight = Answer<typeof sheetFlightAnswer>;

export const sheetTieDownAnswer = z
  .strictObject({
    counted: tieDownAnswer
      .nullable()
      .describe('Null: not counted, and `words` say what is missing and where it is entered.'),
    words: z.string(),
    brief: z.string().describe('For paper.'),
    caution: z.string(),
  })
  .meta({ id: 'SheetTieDown', description: 'Straps for each drum, reckoned by the heaviest.' });
export type SheetTieDown = Answer<typeof sheetTieDownAnswer>;

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
export type SheetCargo = Answer<typeof sheetCargoAnswer>;

export const rowBalanceAnswer = z
  .strictObject({
    armIn: inches,
    forwardIn: inches.nullable().describe('Null: a weight outside the envelope.'),
    aftIn: inches.nullable(),
    inside: z.boolean(),
  })
  .meta({ id: 'RowBalance' });
export type RowBalance = Answer<typeof rowBalanceAnswer>;

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
export type WeightRow = Answer<typeof weightRowAnswer>;

export const sheetTotalsAnswer = z
  .strictObject({
    items: z.array(sheetItemAnswer),
    loadKg: kg,
    loadLb: lb,
    takeoffLb: lb,
    plannedLoadLb: lb.describe('With every drum at its planning weight.'),
    plannedTakeoffLb: lb,
    taxiFuelLb: lb,
    roundingWords: z.string().nullable().describe('Why the kg total is not quite the lb total; null: it is.'),
  })
  .meta({
    id: 'SheetTotals',
    description: 'The figures of the two pairs of totals on one leg, and what is needed to compare them.',
  });
export type SheetTotals = Answer<typeof sheetTotalsAnswer>;

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
    passengersAndDrums: z.union([
      z.strictObject({
        allowed: z.literal(true),
        by: z.literal('nothing to rule on'),
        words: z.null(),
      }),
      z.strictObject({
        allowed: z.literal(true),
        by: authorityApprovalAnswer,
        words: z.string(),
      }),
      z.strictObject({
        allowed: z.literal(false),
        words: z.string(),
      }),
    ]),
  })
  .meta({ id: 'SheetLeg' });
export type SheetLeg = Answer<typeof sheetLegAnswer>;

export const loadSheetAnswer = z
  .strictObject({
    format: z.literal('drumline-sheet/1'),
    flight: sheetFlightAnswer,
    replacesWords: z
      .string()
      .nullable()
      .describe('"Version 3 replaces version 2: throw version 2 away."; null: the first version.'),
    route: z.array(z.string()),
    drums: z.array(sheetDrumAnswer),
    cargo: z.array(sheetCargoAnswer),
    legs: z.array(sheetLegAnswer),
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
export type LoadSheet = Answer<typeof loadSheetAnswer>;
