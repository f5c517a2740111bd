import { z } from 'zod';
import { type Answer, cents, hours, isoDate, litres } from '../field.js';

export const programmeTotalAnswer = z
  .strictObject({
    programme: z.string(),
    name: z.string(),
    recharge: z.discriminatedUnion('kind', [
      z.strictObject({
        kind: z.literal('delivered cost'),
        marginPercent: z.number(),
      }),
      z.strictObject({
        kind: z.literal('fixed price'),
        centsPerLitre: z.number(),
      }),
      z.strictObject({
        kind: z.literal('not recharged'),
      }),
    ]),
    plannedHours: hours,
    plannedLitres: litres,
    flownHours: hours.describe(
      'By the litres drawn into helicopters, at what each burns an hour: nobody reports the hours themselves.',
    ),
    drawnLitres: litres,
    charged: cents,
    litresWithoutCost: litres.describe(
      'Drawn at delivered cost from drums that no known flight brought: not in what is charged.',
    ),
  })
  .meta({
    id: 'ProgrammeTotal',
    description: 'What a programme asked for, what it took, and what is charged on for that.',
  });

export const programmeTotalsAnswer = z
  .strictObject({
    from: isoDate,
    until: isoDate,
    items: z.array(programmeTotalAnswer),
    next: z.null(),
  })
  .meta({
    id: 'ProgrammeTotalsAnswer',
    description: 'Answer of GET /api/programme-totals: between two days, both included.',
  });
export type ProgrammeTotalsAnswer = Answer<typeof programmeTotalsAnswer>;
