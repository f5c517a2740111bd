import type { BookedLoadAnswer } from '@drumline/contract/answers';
import { z } from 'zod';
import { partOf } from '../../../api/index.js';
import { answerSchema } from '../load-read.js';

const levels = z.object({ lowestLitres: z.number() });
const most = { drums: z.number(), by: z.string() };

/** GET /api/booked-flights/:id/load. */
export const bookedLoadSchema = partOf<BookedLoadAnswer>()(
  z.object({
    asked: z.object({ place: z.string(), drums: z.number() }),
    planned: answerSchema.shape.planned,
    drawn: z.number(),
    why: z.string().nullable(),
    planningKg: z.number(),
    notKnown: z.array(z.string()),
    legs: z.array(z.object({ from: z.string(), to: z.string(), ...most })),
    landings: z.array(z.object({ place: z.string(), ...most })),
    stand: z.object({
      base: z.string(),
      free: z.number(),
      take: z.array(z.string()),
      toFill: z.number(),
    }),
    cost: z
      .object({
        fuel: z.number(),
        handling: z.number(),
        total: z.number(),
        perLitre: z.number().nullable(),
      })
      .nullable(),
    caches: z.array(
      z.object({ place: z.string(), minimumLitres: z.number(), withIt: levels, without: levels }),
    ),
    faults: z.array(z.object({ path: z.string(), problem: z.string(), remedy: z.string() })),
    instead: z.array(
      z.object({ flight: z.string(), date: z.string(), drums: z.number(), words: z.string() }),
    ),
  }),
);

export type BookedLoad = z.output<typeof bookedLoadSchema>;

/** What a person has chosen; undefined: what the server would choose. */
export interface Asked {
  readonly place?: string;
  /** As typed. */
  readonly drums?: string;
  readonly approval: string;
}

/** The drums as typed; null: no whole number from 0 to 100. */
export const countOf = (typed: string): number | null => {
  const count = Number(typed);
  return typed.trim() !== '' && Number.isInteger(count) && count >= 0 && count <= 100 ? count : null;
};

/** Where the load of a booked flight is read, with the drums that are asked; with none while what is typed is no number. */
export const bookedLoadPath = (id: string, { place, drums, approval }: Asked): string => {
  const query = new URLSearchParams({
    ...(place === undefined ? {} : { place }),
    ...(drums === undefined ? {} : { drums: String(countOf(drums) ?? 0) }),
    ...(approval.trim() === '' ? {} : { approval: approval.trim() }),
  }).toString();
  return `/api/booked-flights/${encodeURIComponent(id)}/load${query === '' ? '' : `?${query}`}`;
};
