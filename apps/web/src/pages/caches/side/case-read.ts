import { z } from 'zod';

const movementSchema = z
  .object({
    id: z.string(),
    kind: z.string(),
    happenedAt: z.string(),
    by: z.string(),
    means: z.string(),
    drum: z.string().optional(),
    place: z.string().optional(),
    from: z.string().optional(),
    to: z.string().optional(),
    flight: z.string().optional(),
    into: z.string().optional(),
    programme: z.string().optional(),
    millilitres: z.number().optional(),
  })
  .loose();

export type Entered = z.output<typeof movementSchema>;

/** One of GET /api/cases. */
export const caseSchema = z.object({
  count: z.string(),
  place: z.string(),
  countedBy: z.array(z.string()),
  countedMillilitres: z.number(),
  bookMillilitres: z.number(),
  differenceMillilitres: z.number(),
  toleranceMillilitres: z.number(),
  counted: movementSchema,
  agreed: movementSchema.nullable(),
  movementsSince: z.array(movementSchema),
  notHeardFrom: z.array(z.object({ person: z.string(), device: z.string(), lastSeenAt: z.string() })),
  peopleWithDevice: z.number(),
  proposals: z.array(
    z.object({
      id: z.string(),
      proposedBy: z.string(),
      agreedBy: z.array(z.string()),
      payload: z.object({ cause: z.string(), words: z.string() }).loose(),
    }),
  ),
});

export type DifferenceCase = z.output<typeof caseSchema>;

/** GET /api/closed-cases, the newest first. */
export const closedCasesSchema = z.object({
  items: z.array(
    z.object({
      closing: z.object({
        cause: z.string(),
        words: z.string(),
        by: z.string(),
        second: z.string(),
        at: z.string(),
      }),
      counted: z.object({ place: z.string(), millilitres: z.number() }),
    }),
  ),
});
