import type { TotalsAnswer } from '@drumline/contract';
import type { CheckCodeAnswer, PaperEntries as PaperEntriesAnswer } from '@drumline/contract/answers';
import type { CountTolerance, DensityTolerance } from '@drumline/stock';
import { z } from 'zod';
import { partOf } from '../../../api/index.js';

// Other pages read the same paths, and what is read is shared: nothing is taken out or turned round here.

/** Of a list, which does not say what is aboard. */
export const listedFlightSchema = z.looseObject({ id: z.string(), state: z.string() });

export const flightSchema = z.looseObject({
  id: z.string(),
  state: z.string(),
  version: z.number(),
  date: z.string(),
  departs: z.string(),
  pilot: z.string().nullable(),
  fromPlace: z.string(),
  toPlace: z.string(),
  stops: z.array(z.looseObject({ place: z.string() })),
  planned: z.looseObject({ legs: z.array(z.unknown()) }),
  loads: z.array(z.looseObject({ place: z.string(), drum: z.string().nullable() })),
});

export const drumSchema = z.looseObject({
  number: z.string(),
  litres: z.number(),
  content: z.string(),
  held: z.unknown().nullable(),
  condemned: z.unknown().nullable(),
  retestDue: z.string().nullable(),
  where: z.looseObject({ kind: z.string(), place: z.string().optional() }),
});

export const placeSchema = z.looseObject({ data: z.looseObject({ code: z.string(), name: z.string() }) });

export const programmeSchema = z.looseObject({ data: z.looseObject({ code: z.string(), name: z.string() }) });

export const batchSchema = z.looseObject({
  data: z.looseObject({ id: z.string(), densityAt15KgPerLitre: z.number() }),
});

export const policySchema = z.looseObject({
  data: z.looseObject({
    bookDensityKgPerLitre: z.number().optional(),
    drum: z.looseObject({ fillLitres: z.number() }).optional(),
    countTolerance: z
      .custom<CountTolerance>((value) => typeof value === 'object' && value !== null)
      .optional(),
    densityTolerance: z
      .custom<DensityTolerance>((value) => typeof value === 'object' && value !== null)
      .optional(),
  }),
});

/** GET /api/paper-entries. */
export const paperEntriesSchema = partOf<PaperEntriesAnswer>()(
  z.object({
    since: z.string(),
    items: z.array(
      z.object({
        id: z.string(),
        source: z.string(),
        means: z.enum(['radio', 'paper']),
        flight: z.string().nullable(),
        what: z.string(),
        happenedAt: z.string(),
        writtenAt: z.string(),
        enteredAt: z.string(),
        by: z.string(),
        enteredBy: z.string().nullable(),
      }),
    ),
    silence: z.object({ from: z.string().nullable(), until: z.string().nullable() }).nullable(),
  }),
);

export type PaperEntries = z.output<typeof paperEntriesSchema>;

/** GET /api/flights/:id/check-code: of base's own sheet what its totals do not give away. Null: there is none. */
export const ownCodeSchema = partOf<CheckCodeAnswer>()(z.object({ checkCode: z.string().nullable() }));

/** POST /api/flights/:id/totals: a figure of base's own sheet beside the one that stands on a line. */
export const ownTotalSchema = partOf<TotalsAnswer>()(
  z.object({
    of: z.enum(['load', 'take-off weight']),
    agrees: z.boolean(),
    words: z.string(),
    slips: z.array(z.object({ title: z.string(), words: z.string() })),
    advice: z.string(),
  }),
);

export type OwnTotal = z.output<typeof ownTotalSchema>;
