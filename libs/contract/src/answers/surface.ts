import { z } from 'zod';
import { scenarioSchema } from '../scenario/scenario-schema.js';
import { type Answer, instant } from './field.js';

export const storedSurfaceReportAnswer = z
  .strictObject({
    id: z.string(),
    place: z.string(),
    data: scenarioSchema.shape.surfaceReports.element,
    accountId: z.string().nullable(),
    receivedAt: instant,
  })
  .meta({
    id: 'StoredSurfaceReport',
    description: 'A report as somebody gave it. A better one is a later one: nothing is overwritten.',
  });
export type StoredSurfaceReport = Answer<typeof storedSurfaceReportAnswer>;
