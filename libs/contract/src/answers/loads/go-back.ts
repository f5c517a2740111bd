import { z } from 'zod';
import { type Answer, clockTime, kt, lb, nm } from '../field.js';
import { blindMomentAnswer } from './balance.js';

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

export const ifSoftAnswer = z
  .strictObject({
    place: z.string(),
    take: z
      .number()
      .nullable()
      .describe(
        'Drums for that place that still go, 0 where only those for other stops do; null: do not go by this version.',
      ),
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

export const alternateAnswer = z
  .strictObject({
    place: z.string(),
    distanceNm: nm.describe('From the end of the leg.'),
    isHome: z.boolean().describe('The flight ends there.'),
    drums: z.number(),
    roomDrums: z.number().nullable().describe('Null: not limited.'),
    landingLb: lb,
    fuelLb: lb,
    homeShortLb: lb.describe(
      'What is wanting there to fly home and have final reserve left; 0: nothing, or it is the end of the flight.',
    ),
    isOneWay: z.boolean(),
    tailwindLimitKt: kt.nullable().describe('Null: not given for the place.'),
    surface: z.string().nullable().describe('"soft"; "as soft": unknown, so soft counts; null: firm.'),
    whyNot: z.string().nullable().describe('Null: it will do.'),
    words: z
      .string()
      .describe(
        '"CIN, room 28, one-way, tailwind to 3 kt, as soft", or with why not: "KNA (FW4 is not cleared for KNA, class 3)".',
      ),
  })
  .meta({ id: 'Alternate', description: 'An alternate looked at with the load aboard.' });

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
    notToUse: z
      .string()
      .nullable()
      .describe(
        'Home where it will not do, and the nearest place that will not, where it is nearer than the first that will.',
      ),
    lines: z.array(z.string()).describe('The lines as they stand on phone and paper, in this order.'),
  })
  .meta({
    id: 'GoBack',
    description: 'What is decided the evening before about the landing at the end of one leg.',
  });

export const fallbackAnswer = ifSoftAnswer
  .pick({ place: true, words: true, take: true, leave: true, moves: true })
  .extend({
    leg: z.number(),
    moments: z.array(blindMomentAnswer),
    drumsLb: lb.describe('Of the drums that go.'),
  })
  .meta({ id: 'Fallback' });
export type Fallback = Answer<typeof fallbackAnswer>;
