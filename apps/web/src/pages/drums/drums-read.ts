import type { FillListAnswer, PickListAnswer, RetestComingAnswer } from '@drumline/contract';
import type {
  DensityTolerance,
  DrumContent,
  HistoryEntry,
  Hold,
  Movement,
  Raised,
  Where,
} from '@drumline/stock';
import { z } from 'zod';

/** What libs already have a type for is taken at its word: it comes from the same source. */
const as = <T>() => z.custom<T>((value) => typeof value === 'object' && value !== null);

const hold = as<Hold>().nullable();

export const drumSchema = z.object({
  number: z.string(),
  alsoKnownAs: z.array(z.string()),
  where: as<Where>(),
  content: z.custom<DrumContent>((value) => typeof value === 'string'),
  litres: z.number(),
  batch: z.string().nullable(),
  openedAt: z.string().nullable(),
  tareKg: z.number().nullable(),
  grossKg: z.number().nullable(),
  held: hold,
  condemned: hold,
  retestDue: z.string().nullable(),
});
export type Drum = z.output<typeof drumSchema>;

/** Drums in no figure of a place: aboard, lost, or found with nothing known of them. */
export const elsewherePath = '/api/drums?limit=200&view=elsewhere';

export const drumLifeSchema = drumSchema.extend({
  timeline: z.array(as<HistoryEntry>()),
  batchTimeline: z.array(as<HistoryEntry>()),
  raised: z.array(as<Raised>()),
});
export type DrumLife = z.output<typeof drumLifeSchema>;

const notSeen = z.object({ person: z.string(), device: z.string().nullable(), lastSeenAt: z.string() });
export type NotSeen = z.output<typeof notSeen>;
export const notSeenSchema = notSeen;

export const holdEffectSchema = z.object({
  drums: z.number(),
  litres: z.number(),
  places: z.array(
    z.object({
      place: z.string(),
      drums: z.number(),
      numbers: z.array(z.string()),
      usableLitresBefore: z.number(),
      usableLitresAfter: z.number(),
      levelAfter: z.enum(['enough', 'below minimum', 'below critical']).nullable(),
      radioScript: z.string(),
    }),
  ),
  belowMinimum: z.array(z.string()),
  belowCritical: z.array(z.string()),
  flights: z.array(
    z.object({
      flight: z.string(),
      state: z.string().nullable(),
      isAboard: z.boolean(),
      numbers: z.array(z.string()),
      radioScript: z.string(),
    }),
  ),
  message: z.string(),
  toHear: z.array(notSeen),
});
export type HoldEffect = z.output<typeof holdEffectSchema>;

export const standingHoldSchema = z.object({
  id: z.string().nullable(),
  of: z.union([z.object({ batch: z.string() }), z.object({ drum: z.string() })]),
  reason: z.string(),
  by: z.string(),
  at: z.string(),
  drums: z.number(),
  litres: z.number(),
  places: z.array(z.string()),
});
export type StandingHold = z.output<typeof standingHoldSchema>;

export const proposalSchema = z.object({
  id: z.string(),
  act: z.string(),
  subject: z.string(),
  payload: z.record(z.string(), z.unknown()),
  proposedAt: z.string(),
  agreed: z.array(z.string()),
  agreedBy: z.array(z.string()),
});
export type Proposal = z.output<typeof proposalSchema>;

export const raisedSchema = z.object({
  id: z.string(),
  kind: z.string(),
  drum: z.string().nullable(),
  place: z.string().nullable(),
  flight: z.string().nullable(),
  what: z.string(),
  whatNext: z.string(),
  raisedAt: z.string().nullable(),
  isSeen: z.boolean(),
  lastAct: z.object({ act: z.string(), words: z.string(), person: z.string(), at: z.string() }).nullable(),
});
export type RaisedThing = z.output<typeof raisedSchema>;

export const enteredSchema = z.object({ entry: z.number(), movement: as<Movement>() });
export type Entered = z.output<typeof enteredSchema>;

export const pageOf = <T>(item: z.ZodType<T>) =>
  z.object({ items: z.array(item), next: z.string().nullable() });

export const fillListSchema = as<FillListAnswer>();
export const pickListSchema = as<PickListAnswer>();
export const retestSchema = as<RetestComingAnswer>();

export const stockSchema = z.object({
  items: z.array(
    z.object({
      place: z.string(),
      bookLitres: z.number(),
      sealedDrums: z.number(),
      sealedHeldDrums: z.number(),
      partUsedHeldDrums: z.number(),
      partUsedDrums: z.number(),
      emptyDrums: z.number(),
      cache: z.object({ minimumLitres: z.number(), criticalLitres: z.number() }).nullable(),
    }),
  ),
});
export type Stock = z.output<typeof stockSchema>;

export const batchSchema = z.object({
  data: z.object({
    id: z.string(),
    grade: z.string(),
    filledOn: z.string(),
    retestDue: z.string(),
    densityAt15KgPerLitre: z.number(),
    filledAt: z.array(z.string()),
  }),
});
export type Batch = z.output<typeof batchSchema>['data'];

export const baseSchema = z.object({ data: z.object({ place: z.string() }) });

export const placeSchema = z.object({
  data: z.object({ code: z.string(), name: z.string(), kind: z.string() }),
});

export const policySchema = z.object({
  data: z.object({
    drum: z.object({ tareKg: z.number(), fillLitres: z.number(), brimLitres: z.number().optional() }),
    densityTolerance: as<DensityTolerance>().optional(),
  }),
});

/** What of the policy a drum on the scale is judged by. */
export const checkedBy = (policy: z.output<typeof policySchema>['data'] | undefined) => ({
  brimLitres: policy?.drum.brimLitres,
  tolerance: policy?.densityTolerance,
});
