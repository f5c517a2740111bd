import { z } from 'zod';
import { useReads } from './read.js';

/** Of what the territory says, by the word of its path. */
const called = {
  settings: 'title, days and time zone',
  policy: 'fuel, crew and drum rules',
  places: 'places',
  batches: 'batches',
} as const;

const listSchema = z.object({ items: z.array(z.unknown()) });

/** Why an act leads nowhere on an installation that is not set up, for `offBecause`; undefined: all that it needs is there. */
export const useNotSetUpYet = (...needs: readonly (keyof typeof called)[]): string | undefined => {
  const reads = useReads(
    needs.map((need) => `/api/${need}?limit=1`),
    listSchema,
  );
  const missing = needs.find((_, at) => reads[at]?.value?.items.length === 0);
  return missing && `Set-up has no ${called[missing]} yet.`;
};
