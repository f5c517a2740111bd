import { z } from 'zod';
import { type Answer, inches, lb } from '../field.js';
import { balanceMomentName } from '../words.js';

export const balanceFaultAnswer = z
  .strictObject({
    kind: z.enum(['floor limit', 'envelope', 'no place', 'place taken', 'unload order', 'tail tip']),
    leg: z.string(),
    text: z.string(),
  })
  .meta({ id: 'BalanceFault', description: 'What is wrong with a loading, and where.' });

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
    description:
      'Where the centre of gravity lies at one moment of one leg, against the envelope; limits null: weight outside it. Without its weight, which is a total that somebody may be adding up.',
  });
export type BlindMoment = Answer<typeof blindMomentAnswer>;

export const rowBalanceAnswer = z
  .strictObject({
    armIn: inches,
    forwardIn: inches.nullable().describe('Null: a weight outside the envelope.'),
    aftIn: inches.nullable(),
    inside: z.boolean(),
  })
  .meta({ id: 'RowBalance' });

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
