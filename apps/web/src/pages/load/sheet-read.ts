import { z } from 'zod';

export const surface = z.enum(['dry', 'damp', 'soft', 'closed']);

const leaveSchema = z.object({ words: z.string(), canLeaveLoaded: z.boolean() });

const legSchema = z.object({
  from: z.string(),
  to: z.string(),
  distanceNm: z.number(),
  surface,
  passengers: z.number(),
  goBack: z.object({
    place: z.string(),
    tailwindLimitKt: z.number().nullable(),
    committalPoint: z.string().nullable(),
    leaveAgain: leaveSchema.nullable(),
    leaveAgainSoft: leaveSchema.nullable(),
    lines: z.array(z.string()),
    notToUse: z.string().nullable(),
  }),
  particulars: z.array(z.object({ label: z.string(), value: z.string().nullable() })),
  passengersAndDrums: z.object({ allowed: z.boolean(), words: z.string().nullable() }),
});

export type SheetLeg = z.output<typeof legSchema>;

const sheetDrumSchema = z.object({
  position: z.string(),
  number: z.string(),
  batch: z.string(),
  grossKg: z.number(),
  lb: z.number(),
  leaveAt: z.string(),
  onHold: z.boolean(),
});

export type SheetDrum = z.output<typeof sheetDrumSchema>;

/** The load sheet, as the page shows it. */
export const sheetSchema = z.object({
  drums: z.array(sheetDrumSchema),
  cargo: z.array(
    z.object({
      name: z.string(),
      place: z.string().nullable(),
      kg: z.number(),
      lb: z.number(),
      firstLeg: z.number(),
      lastLeg: z.number(),
    }),
  ),
  legs: z.array(legSchema),
  tieDown: z
    .object({
      counted: z
        .object({
          needs: z.array(
            z.object({
              direction: z.enum(['forward', 'aft', 'sideways', 'up']),
              neededLb: z.number(),
              straps: z.number().nullable(),
            }),
          ),
        })
        .nullable(),
      words: z.string(),
      caution: z.string(),
    })
    .nullable(),
  particularsMissing: z.string().nullable(),
  notInBookWords: z.string().nullable(),
  heldWords: z.string().nullable(),
  fuelWords: z.string(),
  assumptions: z.string(),
  cautions: z.array(z.string()),
  checkCode: z.string(),
  replacesWords: z.string().nullable(),
});

export type TieDown = NonNullable<z.output<typeof sheetSchema>['tieDown']>;
