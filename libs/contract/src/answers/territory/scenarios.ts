import { z } from 'zod';
import { faultAnswer } from '../words.js';

export const missingAnswer = z
  .strictObject({
    at: z
      .enum([
        'format',
        'drums',
        'counts',
        'title',
        'aircraft',
        'flights',
        'note',
        'timeZone',
        'caches',
        'tieDown',
        'programmes',
        'helicopterTasks',
        'helicopters',
        'days',
        'offeredDays',
        'asOf',
        'firstDay',
        'currency',
        'policy',
        'places',
        'distances',
        'winds',
        'surfaceReports',
        'notices',
        'noFlyingDays',
        'weather',
        'aircraftTypes',
        'stripLimits',
        'pilots',
        'batches',
        'bases',
        'slings',
        'plannedUplifts',
        'bookedFlights',
        'approvals',
        'dangerousGoods',
        'handPlan',
        'settings',
      ])
      .describe('Where it is filled in: the settings, or a field of the scenario document.'),
    of: z
      .string()
      .describe(
        'The thing there that has a fault, by its own name. Empty: a part is missing, or there is one of it.',
      ),
    field: z.string().describe('The field with the fault, inside that thing. Empty: the thing as a whole.'),
    what: z.string().describe('What is missing or wrong, in the words of the trade.'),
    next: z.string().describe('What to do about it.'),
  })
  .meta({ id: 'Missing', description: 'Something without which no plan can be made.' });

export const importedAnswer = z
  .strictObject({
    dryRun: z.boolean(),
    doubts: z.array(faultAnswer).describe('What looks wrong and did not keep the document out.'),
    places: z.number(),
    drums: z.number(),
  })
  .meta({ id: 'Imported' });
