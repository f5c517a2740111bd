import { z } from 'zod';
import type { Answer } from '../field.js';
import { faultAnswer } from '../words.js';

export const drumsFromAnswer = z
  .strictObject({
    base: z.string(),
    strip: z.string(),
    type: z.string(),
    dry: z.number().nullable(),
    soft: z.number().nullable(),
  })
  .meta({
    id: 'DrumsFrom',
    description:
      'Drums of a round trip from a base; null: it cannot be flown with a drum aboard, or the strip is closed to it.',
  });

export const limitFaultAnswer = faultAnswer
  .extend({ place: z.string(), type: z.string() })
  .meta({ id: 'LimitFault' });

export const checkedLimitsAnswer = z
  .strictObject({
    drums: z.array(drumsFromAnswer),
    faults: z
      .array(limitFaultAnswer)
      .describe('Of the limits that were asked about, each below its own limit: `landingLb`.'),
  })
  .meta({ id: 'CheckedLimits' });
export type CheckedLimits = Answer<typeof checkedLimitsAnswer>;
