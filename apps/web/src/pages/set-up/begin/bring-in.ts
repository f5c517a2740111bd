import { z } from 'zod';
import { post } from '../../../api/index.js';

const faultSchema = z.object({ path: z.string(), problem: z.string(), remedy: z.string() });
export const importedSchema = z.object({
  dryRun: z.boolean(),
  doubts: z.array(faultSchema),
  places: z.number(),
  drums: z.number(),
});
export type Imported = z.output<typeof importedSchema>;

const path = '/api/scenario/import';

export const tryDocument = async (document: unknown): Promise<Imported> =>
  (await post(`${path}?dryRun=true`, document, { schema: importedSchema })).body;

export const bringIn = async (
  document: Readonly<Record<string, unknown>>,
  clock: 'document' | 'time of day',
): Promise<Imported> =>
  (await post(`${path}?clock=${encodeURIComponent(clock)}`, document, { schema: importedSchema })).body;
