import { z } from 'zod';

export const healthAnswer = z
  .strictObject({
    status: z.string(),
    database: z.enum(['up', 'down']),
    queue: z.enum(['up', 'down']),
    solver: z.enum(['up', 'down']),
  })
  .meta({ id: 'HealthAnswer' });
