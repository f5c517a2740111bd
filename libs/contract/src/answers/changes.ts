import { z } from 'zod';

export const versionsAnswer = z
  .strictObject({
    territory: z.string(),
    stock: z.string(),
    flights: z.string(),
    plans: z.string(),
    surfaceReports: z.string(),
    proposals: z.string(),
    handovers: z.string(),
  })
  .meta({
    id: 'Versions',
    description:
      'What a page watches, each with a word that is another one as soon as anything of the kind is.',
  });
