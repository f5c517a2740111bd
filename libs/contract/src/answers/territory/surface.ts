import { z } from 'zod';
import { instant } from '../field.js';
import { surfaceReport } from '../planned.js';

export const storedSurfaceReportAnswer = z
  .strictObject({
    id: z.string(),
    place: z.string(),
    data: surfaceReport,
    accountId: z.string().nullable(),
    receivedAt: instant,
  })
  .meta({
    id: 'StoredSurfaceReport',
    description: 'A report as somebody gave it. A better one is a later one: nothing is overwritten.',
  });
