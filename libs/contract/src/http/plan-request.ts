import { z } from 'zod';
import { cents, isoDate } from '../scenario/field.js';
import { longText, shortText } from './written-field.js';

/** What a planning run is asked for. The id is in the address and made by the sender, so that a retry is harmless. */
export const planRequestSchema = z
  .strictObject({
    from: isoDate(
      'The day it is now, as the sender sees it; refused where that day is over',
      '2027-06-14',
    ).exactOptional(),
    days: z
      .number()
      .int()
      .min(1)
      .max(60)
      .meta({
        description: 'Days looked ahead; absent: as the territory is set',
        unit: 'days',
        examples: [14],
      })
      .exactOptional(),
    offeredDays: z
      .number()
      .int()
      .min(1)
      .max(60)
      .meta({
        description:
          'Days whose flights are offered when the plan is accepted; absent: as the territory is set',
        unit: 'days',
        examples: [7],
      })
      .exactOptional(),
    endTarget: z
      .enum(['hand plan', 'minimum', 'operator'])
      .default('operator')
      .meta({ description: 'What the caches are to hold at the end', examples: ['operator'] }),
    seconds: z
      .number()
      .min(1)
      .max(600)
      .default(60)
      .meta({ description: 'Time limit of the search', unit: 's', examples: [60] }),
    seed: z
      .number()
      .int()
      .min(0)
      .max(2_147_483_647)
      .default(1)
      .meta({
        description: 'Start of the random search; the same seed and time find much the same plan',
        examples: [1],
      }),
    frozen: z
      .array(shortText('Flight', 'F012'))
      .max(500)
      .default([])
      .meta({ description: 'Offered flights that this run leaves as they are', examples: [['F012']] }),
    letGo: z
      .array(shortText('Flight', 'F05'))
      .max(500)
      .meta({
        description: 'Flights that were let go for this run: said beside its list of differences',
        examples: [['F05']],
      })
      .exactOptional(),
    changePrice: cents(
      'Price of removing, moving or changing a standing flight in this run; absent: as the policy has it',
      10000,
    ).exactOptional(),
    note: longText('What for', 'after the rain').exactOptional(),
  })
  .meta({ id: 'PlanRequest', description: 'A planning run' });

export type PlanRequest = z.output<typeof planRequestSchema>;

/** A plan is accepted whole, or without some lines of its list of differences. */
export const planAcceptSchema = z
  .strictObject({
    without: z
      .array(shortText('Line', 'P03'))
      .max(500)
      .default([])
      .meta({
        description: 'Lines left out: the flight in the plan, of a removed one its own number',
        examples: [['P03']],
      }),
  })
  .meta({ id: 'PlanAccept', description: 'What of a plan is accepted' });

export type PlanAccept = z.output<typeof planAcceptSchema>;
