import { z } from 'zod';
import { type Answer, inches, isoDate, kg, lb } from './field.js';
import { balanceMomentName, limitName, surfaceState } from './words.js';

export const preparedPositionAnswer = z
  .strictObject({
    id: z.string(),
    armIn: inches,
    limitLb: lb,
    loadOrder: z
      .number()
      .describe('Deepest first: 1 is loaded first. Positions with the same figure are loaded in any order.'),
    unloadOrder: z.number().describe('1 comes out first.'),
  })
  .meta({ id: 'PreparedPosition' });
export type PreparedPosition = Answer<typeof preparedPositionAnswer>;

export const preparationListAnswer = z
  .strictObject({
    type: z.string(),
    configuration: z.string(),
    operatingWeightLb: lb,
    operatingArmIn: inches,
    reference: z.string(),
    positions: z.array(preparedPositionAnswer).describe('Front to back.'),
    freightPlaces: z.array(
      z.strictObject({
        id: z.string(),
        armIn: inches,
        limitLb: lb,
      }),
    ),
    seats: z.number(),
    standings: z
      .array(
        z.strictObject({
          drums: z.number(),
          positions: z.array(z.string()),
          why: z.string().nullable(),
        }),
      )
      .describe(
        'For each number of drums of planning weight: where they stand with that fuel, or why they cannot.',
      ),
  })
  .meta({
    id: 'PreparationList',
    description: 'What a loader prepares in a cabin before the drums come: one page for each configuration.',
  });
export type PreparationList = Answer<typeof preparationListAnswer>;

export const particularAnswer = z
  .strictObject({
    label: z.string(),
    value: z.string().nullable().describe('Null: to be written in by hand.'),
  })
  .meta({ id: 'Particular' });
export type Particular = Answer<typeof particularAnswer>;

export const authorityApprovalAnswer = z
  .strictObject({
    number: z.string(),
    authority: z.string(),
    scope: z.string().describe('What it is for, in its own words.'),
    legs: z
      .array(z.tuple([z.string(), z.string()]))
      .nullable()
      .describe('Legs it covers, either way; null: every leg.'),
    aircraft: z.array(z.string()).nullable().describe('Aircraft it covers; null: all.'),
    mostDrums: z.number().nullable(),
    mostPassengers: z.number().nullable(),
    conditions: z.string(),
    from: isoDate,
    until: isoDate.describe('Last day on which it holds.'),
    enteredBy: z.string(),
    confirmedBy: z.string().nullable().describe('The second person.'),
  })
  .meta({
    id: 'AuthorityApproval',
    description: 'An approval or exemption of the authority, as it stands on file.',
  });
export type AuthorityApproval = Answer<typeof authorityApprovalAnswer>;

export const restraintDirection = z.enum(['forward', 'aft', 'sideways', 'up']);
export type RestraintDirection = Answer<typeof restraintDirection>;

export const restraintNeedAnswer = z
  .strictObject({
    direction: restraintDirection,
    neededLb: lb,
    eachLb: lb.describe('What one strap holds that way at its angles.'),
    straps: z
      .number()
      .nullable()
      .describe('Sideways: on each side. Null: straps at these angles hold nothing that way.'),
  })
  .meta({
    id: 'RestraintNeed',
    description: 'What must be held in one direction, and by how many straps that pull that way.',
  });
export type RestraintNeed = Answer<typeof restraintNeedAnswer>;

export const tieDownAnswer = z
  .strictObject({
    loadLb: lb,
    deciding: z.strictObject({
      part: z.enum(['strap', 'fitting', 'floor ring']),
      figure: z.literal('ultimate load in an aircraft'),
      ultimateLb: lb,
      reference: z.string().describe('Approval, standard or manual that rates it for aircraft.'),
    }),
    needs: z.array(restraintNeedAnswer),
    layout: z
      .strictObject({
        forwardStraps: z.number(),
        aftStraps: z.number(),
      })
      .nullable()
      .describe(
        'Straps in pairs, one to each side: those that hold forward, and those that hold aft. Null: not possible so.',
      ),
    words: z.string().describe('Straps by direction and in all, what decides, and by which figures.'),
    brief: z.string().describe('The same in one breath, for paper.'),
    caution: z.string(),
  })
  .meta({
    id: 'TieDown',
    description: 'A planning aid: what the approved loading manual says goes before it.',
  });
export type TieDown = Answer<typeof tieDownAnswer>;

export const barBlockAnswer = z
  .strictObject({
    name: z.string(),
    kg: kg,
    lb: lb.describe('Whole, as printed.'),
    isDrum: z.boolean(),
  })
  .meta({ id: 'BarBlock', description: 'One thing aboard, as a block of the bar.' });
export type BarBlock = Answer<typeof barBlockAnswer>;

export const barLimitAnswer = z
  .strictObject({
    name: limitName,
    place: z.string().nullable().describe('Null: a limit of the aeroplane.'),
    surface: surfaceState.nullable().describe('State of the strip it is for; null with the place.'),
    moment: z.enum(['zero fuel', 'take-off', 'landing']),
    limitLb: lb,
    spareLb: lb.describe('Of the printed sum; negative: over.'),
    holds: z.boolean(),
    binds: z.boolean().describe('The nearest of the limits that this leg is flown under.'),
  })
  .meta({ id: 'BarLimit', description: 'One limit, measured from the weight it concerns.' });
export type BarLimit = Answer<typeof barLimitAnswer>;

export const payloadBarAnswer = z
  .strictObject({
    operatingLb: lb,
    load: z.array(barBlockAnswer),
    fuelOnLandingLb: lb.describe(
      'Fuel left on landing, and what the leg burns after taxi: together what is aboard at take-off.',
    ),
    tripLb: lb,
    limits: z.array(barLimitAnswer).describe('By moment: zero fuel, take-off, landing; then leaving again.'),
    forbiddenBy: z.string().nullable().describe('Why it may not be flown at all; null: it may.'),
    forbiddenWhenSoft: z
      .string()
      .nullable()
      .describe('Why it may not be flown when the strip is soft; null: it may.'),
    drums: z.number(),
    drumPositions: z.number(),
    relax: z.string().describe('What would let more go, or what has to change for this load to go.'),
  })
  .meta({
    id: 'PayloadBar',
    description:
      'The weights of a leg side by side from the operating weight to the trip fuel, with every limit. Whole pounds.',
  });
export type PayloadBar = Answer<typeof payloadBarAnswer>;

export const balanceFaultAnswer = z
  .strictObject({
    kind: z.enum(['floor limit', 'envelope', 'no place', 'place taken', 'unload order', 'tail tip']),
    leg: z.string(),
    text: z.string(),
  })
  .meta({ id: 'BalanceFault', description: 'What is wrong with a loading, and where.' });
export type BalanceFault = Answer<typeof balanceFaultAnswer>;

export const unloadOrStayAnswer = z
  .strictObject({
    place: z.string(),
    arrivalLb: lb,
    printedArrivalLb: lb.describe('The same as a sheet adds it, in whole pounds.'),
    takeoffLimitLb: lb,
    overLb: lb.describe('Over the limit by this much; negative: room to leave with everything aboard.'),
    printedOverLb: lb,
    canLeaveLoaded: z.boolean().describe('Under the limit by the exact and by the printed sum.'),
  })
  .meta({
    id: 'UnloadOrStay',
    description: 'Weight on arrival with the full load, against what the strip lets the type take off with.',
  });
export type UnloadOrStay = Answer<typeof unloadOrStayAnswer>;

export const slipKind = z.enum([
  'wrong drum',
  'rounding',
  'kg for lb',
  'lb for kg',
  'digits swapped',
  'left out',
  'counted twice',
  'gross for net',
  'before taxi',
  'planned weight',
  'one digit',
  'ten times',
]);
export type SlipKind = Answer<typeof slipKind>;

export const slipAnswer = z
  .strictObject({
    kind: slipKind,
    title: z.string(),
    words: z.string(),
  })
  .meta({
    id: 'Slip',
    description: 'A slip that would explain why two totals differ. It never says which total is right.',
  });
export type Slip = Answer<typeof slipAnswer>;

export const sheetItemAnswer = z
  .strictObject({
    name: z.string().describe('"0447 in R1L", "stores in NET1".'),
    kg: kg.describe('Gross for a drum.'),
    tareKg: kg.nullable().describe('Null: not a drum.'),
  })
  .meta({ id: 'SheetItem', description: 'One row of the load as it stands on the sheet.' });
export type SheetItem = Answer<typeof sheetItemAnswer>;

export const balanceMomentAnswer = z
  .strictObject({
    leg: z.string(),
    moment: balanceMomentName,
    forwardIn: inches.nullable(),
    aftIn: inches.nullable(),
    inside: z.boolean(),
    weightLb: lb,
    armIn: inches,
  })
  .meta({
    id: 'BalanceMoment',
    description:
      'Where the centre of gravity lies at one moment of one leg, against the envelope; limits null: weight outside it.',
  });
export type BalanceMoment = Answer<typeof balanceMomentAnswer>;
