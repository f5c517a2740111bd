import { z } from 'zod';
import { instant } from '../field.js';

export const auditEntryAnswer = z
  .strictObject({
    id: z.string(),
    at: instant,
    accountId: z.string().nullable(),
    person: z.string().describe('The name at the time; the program itself is "drumline".'),
    did: z.string().describe('A verb of the trade: "changed", "approved", "signed in".'),
    subject: z.string().describe('What it was done to, like `place XLOR`.'),
    requestId: z.string().nullable(),
    detail: z.record(z.string(), z.unknown()),
  })
  .meta({
    id: 'AuditEntry',
    description: 'One thing that somebody did. The database refuses to change or remove it.',
  });
