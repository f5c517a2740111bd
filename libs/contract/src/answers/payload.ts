import { z } from 'zod';
import { type Answer } from './field.js';

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
export type DrumsFrom = Answer<typeof drumsFromAnswer>;

export const limitFaultAnswer = z
  .strictObject({
    place: z.string(),
    type: z.string(),
    path: z.string().describe('Where, like `stripLimits[12].landingLb`; empty: the document as a whole.'),
    problem: z.string(),
    remedy: z.string().describe('What to do about it.'),
  })
  .meta({ id: 'LimitFault' });
export type LimitFault = Answer<typeof limitFaultAnswer>;

export const checkedLimitsAnswer = z
  .strictObject({
    drums: z.array(drumsFromAnswer),
    faults: z
      .array(limitFaultAnswer)
      .describe('Of the limits that were asked about, each below its own limit: `landingLb`.'),
  })
  .meta({ id: 'CheckedLimits' });
export type CheckedLimits = Answer<typeof checkedLimitsAnswer>;
