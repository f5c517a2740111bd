import { z } from 'zod';
import { post, put, readOnce } from '../../../api/index.js';

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

/** `asOf`: the clock goes on from the document's moment, as in a demo or a drill; otherwise it is the time of day. */
export const bringIn = async (
  document: Readonly<Record<string, unknown>>,
  clock: 'asOf' | 'time of day',
): Promise<Imported> => {
  const { body } = await post(path, document, { schema: importedSchema });
  if (clock === 'time of day') {
    const { title, note, timeZone, days, offeredDays, currency, noFlyingDays } = document;
    const settings = { title, note, timeZone, days, offeredDays, currency, noFlyingDays };
    const current = '/api/settings/current';
    const { version } = await readOnce(current, z.object({ version: z.number() }));
    await put(current, settings, { version });
  }
  return body;
};
