import { z } from 'zod';
import { scenarioSchema } from '../scenario/scenario-schema.js';
import { type Answer, clockTime, inches, instant, isoDate, lb, nm } from './field.js';
import { whoIsFitAnswer } from './flight-card.js';
import {
  authorityApprovalAnswer,
  balanceFaultAnswer,
  particularAnswer,
  payloadBarAnswer,
  preparationListAnswer,
  slipAnswer,
  unloadOrStayAnswer,
} from './load-parts.js';
import {
  goBackAnswer,
  sheetCargoAnswer,
  sheetDrumAnswer,
  sheetFlightAnswer,
  sheetTieDownAnswer,
} from './sheet-parts.js';
import { balanceMomentName, surfaceState } from './words.js';

export const blindSheetAnswer = z
  .strictObject({
    legs: z.array(
      z.strictObject({
        to: z.string(),
        surface: surfaceState.describe('At `to`.'),
        passengers: z.number(),
        from: z.string(),
        distanceNm: nm,
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
      }),
    ),
    format: z.literal('drumline-sheet/1'),
    drums: z.array(sheetDrumAnswer),
    flight: sheetFlightAnswer,
    tieDown: sheetTieDownAnswer.nullable().describe('Null: no drum is aboard.'),
    toleranceLb: lb,
    faults: z.array(z.string()),
    replacesWords: z
      .string()
      .nullable()
      .describe('"Version 3 replaces version 2: throw version 2 away."; null: the first version.'),
    route: z.array(z.string()),
    cargo: z.array(sheetCargoAnswer),
    fuelWords: z.string(),
    particularsMissing: z
      .string()
      .nullable()
      .describe("Why the particulars are not in the operator's own fields; null: they are."),
    holds: z.boolean().describe('Weights and balance hold in every limit, and no rule refuses the load.'),
    assumptions: z.string(),
    cautions: z.array(z.string()),
    checkCode: z.string(),
  })
  .meta({
    id: 'BlindSheet',
    description:
      'A load sheet whose totals of load and take-off weight are not told: they are compared with what somebody types.',
  });
export type BlindSheet = Answer<typeof blindSheetAnswer>;

export const blindMomentAnswer = z
  .strictObject({
    leg: z.string(),
    moment: balanceMomentName,
    forwardIn: inches.nullable(),
    aftIn: inches.nullable(),
    inside: z.boolean(),
    armIn: inches,
  })
  .meta({
    id: 'BlindMoment',
    description: 'Without its weight, which is a total that somebody may be adding up.',
  });
export type BlindMoment = Answer<typeof blindMomentAnswer>;

export const fallbackAnswer = z
  .strictObject({
    leg: z.number(),
    moments: z.array(blindMomentAnswer),
    drumsLb: lb.describe('Of the drums that go.'),
    place: z.string(),
    words: z.string(),
    take: z.number().nullable().describe('Drums for that place that still go; null: do not go.'),
    leave: z.array(z.string()).describe('Drums to leave at the base.'),
    moves: z
      .array(z.string())
      .describe('Drums that must change position once those are left, "0449 to R1L".'),
  })
  .meta({ id: 'Fallback' });
export type Fallback = Answer<typeof fallbackAnswer>;

export const loadPictureAnswer = z
  .strictObject({
    sheet: blindSheetAnswer,
    bars: z.array(payloadBarAnswer),
    fallbacks: z
      .array(fallbackAnswer)
      .describe('What is left to do when a strip is soft, by leg where drums come off.'),
    holds: z.boolean(),
    faults: z.array(z.string()),
    balanceFaults: z.array(balanceFaultAnswer),
    moments: z.array(blindMomentAnswer).describe('By leg and moment; weights are the sums of the bar.'),
    mend: z
      .strictObject({
        words: z.string(),
        positions: z.array(
          z.strictObject({
            drum: z.string(),
            position: z.string(),
          }),
        ),
      })
      .nullable()
      .describe('The least handling that mends it; null: nothing to mend, or nothing mends it.'),
  })
  .meta({ id: 'LoadPicture', description: 'The load of a flight as it stands, drawn by leg.' });
export type LoadPicture = Answer<typeof loadPictureAnswer>;

export const nextDrumAnswer = z
  .strictObject({
    number: z.string(),
    batch: z.string(),
    kg: z.number(),
  })
  .meta({ id: 'NextDrum' });
export type NextDrum = Answer<typeof nextDrumAnswer>;

export const crewSaidAnswer = z
  .strictObject({
    flight: z.string(),
    kind: z.string(),
    at: instant,
    by: z.string(),
    words: z.string(),
  })
  .meta({ id: 'CrewSaid' });
export type CrewSaid = Answer<typeof crewSaidAnswer>;

export const loadAnswer = z
  .strictObject({
    id: z.string(),
    kind: z.enum(['positioning', 'booked']),
    state: z.string(),
    version: z.number(),
    revision: z.number(),
    needsDecision: z.string().nullable(),
    date: isoDate,
    departs: clockTime,
    aircraft: z.string(),
    pilot: z.string().nullable(),
    route: z.array(z.string()),
    lastAct: z.string(),
    changedAt: instant,
    changedByName: z.string(),
    asOf: instant,
    type: z.strictObject({
      id: z.string(),
      note: z.string().nullable(),
      maxZeroFuelLb: lb,
      envelope: z.array(
        z.strictObject({
          weightLb: lb,
          forwardIn: inches,
          aftIn: inches,
        }),
      ),
    }),
    cabin: preparationListAnswer.nullable().describe('What the loader prepares; places front to back.'),
    load: loadPictureAnswer.nullable().describe('Null: `why` says why there is no load to show.'),
    why: z.string().nullable(),
    toFill: z.number().describe('Drums still to be filled.'),
    nextOldest: z
      .array(
        z.strictObject({
          place: z.string(),
          drum: nextDrumAnswer.nullable(),
        }),
      )
      .describe('By stop: the oldest fit drum at the base that no flight has; null: none.'),
    asPlanned: z
      .array(unloadOrStayAnswer)
      .describe('Unload or stay with every drum at its planning weight, as the plan has it.'),
    planningKg: z.number(),
    crew: z.array(whoIsFitAnswer),
    stops: z.array(
      z.strictObject({
        place: z.string(),
        drums: z.array(z.string()),
      }),
    ),
    reported: z
      .array(scenarioSchema.shape.surfaceReports.element)
      .describe('What was said of the places on the way, the newest first.'),
    crewsSaid: z
      .array(crewSaidAnswer)
      .describe(
        'Flights that did not go, or turned back, at these places, in the words of their crews; the newest first.',
      ),
    toleranceLb: lb.nullable().describe('Null: the operator has not said by how much two totals may differ.'),
  })
  .meta({
    id: 'LoadAnswer',
    description:
      'Answer of GET /api/flights/:id/sheet: one flight as it is loaded, without the totals that are typed blind.',
  });
export type LoadAnswer = Answer<typeof loadAnswer>;

export const totalsAnswer = z
  .strictObject({
    of: z.enum(['load', 'take-off weight']),
    bySheetLb: lb,
    typedLb: lb,
    toleranceLb: lb,
    roundingWords: z.string().nullable().describe('What rounding row by row makes; null: nothing.'),
    agrees: z.boolean(),
    differenceLb: lb,
    words: z.string().describe('The arithmetic: "8,528 lb and 8,258 lb: 270 lb apart".'),
    slips: z
      .array(slipAnswer)
      .describe(
        'Slips that would explain the difference, the likeliest first; none where the totals are equal.',
      ),
    advice: z.string().describe('What to do next.'),
  })
  .meta({ id: 'TotalsAnswer', description: 'Answer of POST /api/flights/:id/totals.' });
export type TotalsAnswer = Answer<typeof totalsAnswer>;

export const loadStandingAnswer = z
  .strictObject({
    holds: z.boolean(),
    faults: z.array(z.string()),
    balanceFaults: z.array(balanceFaultAnswer),
    moments: z.array(blindMomentAnswer).describe('By leg and moment; weights are the sums of the bar.'),
    mend: z
      .strictObject({
        words: z.string(),
        positions: z.array(
          z.strictObject({
            drum: z.string(),
            position: z.string(),
          }),
        ),
      })
      .nullable()
      .describe('The least handling that mends it; null: nothing to mend, or nothing mends it.'),
  })
  .meta({ id: 'LoadStanding', description: 'Whether the drums may stand so, and what would mend it.' });
export type LoadStanding = Answer<typeof loadStandingAnswer>;
