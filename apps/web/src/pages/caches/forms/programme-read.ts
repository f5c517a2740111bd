import { z } from 'zod';
import { slingSchema } from '../../../slings/sling-remedy.js';

const kept = <Data extends z.ZodType>(data: Data) => z.object({ id: z.string(), version: z.number(), data });

/** Lines are sent back whole: what the page does not know stays in them. */
export const taskSchema = kept(
  z
    .object({
      date: z.string(),
      helicopter: z.string(),
      programme: z.string(),
      place: z.string(),
      hours: z.number(),
      litres: z.number(),
    })
    .loose(),
);
export const keptSlingSchema = kept(slingSchema);
export const helicopterSchema = z.object({
  data: z.object({ id: z.string(), fuelLitresPerHour: z.number() }),
});

export type KeptTask = z.output<typeof taskSchema>;
export type KeptSling = z.output<typeof keptSlingSchema>;

/** What of the programme draws on a cache, or moves drums into it and out of it. */
export type Line =
  | { readonly kind: 'helicopter-tasks'; readonly kept: KeptTask }
  | { readonly kind: 'slings'; readonly kept: KeptSling };

export const linesOf = (
  place: string,
  dates: readonly string[],
  tasks: readonly KeptTask[],
  slings: readonly KeptSling[],
): readonly Line[] =>
  [
    ...slings
      .filter(({ data }) => data.from === place || data.to === place)
      .map((kept) => ({ kind: 'slings' as const, kept })),
    ...tasks
      .filter(({ data }) => data.place === place)
      .map((kept) => ({ kind: 'helicopter-tasks' as const, kept })),
  ]
    .filter(({ kept }) => dates.includes(kept.data.date))
    .sort((one, other) => one.kept.data.date.localeCompare(other.kept.data.date));

/** More hours burn more: by the helicopter's litres an hour, on top of what the line has now. */
export const litresAfter = (task: KeptTask['data'], hours: number, litresPerHour: number): number =>
  Math.max(0, Math.round(task.litres + (hours - task.hours) * litresPerHour));
