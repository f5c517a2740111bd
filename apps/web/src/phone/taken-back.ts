import type { Entry } from './kept.js';

type Requests = Pick<Entry, 'requests'>;

/** Ids of the movements that this phone has corrected. */
export const takenBack = (entries: readonly Requests[]): ReadonlySet<string> =>
  new Set(
    entries.flatMap(({ requests }) =>
      requests.flatMap(({ body }) => {
        const { kind, corrects } = body as { readonly kind?: string; readonly corrects?: string };
        return kind === 'corrected' && corrects !== undefined ? [corrects] : [];
      }),
    ),
  );

/** Whether something of an entry has been taken back since. */
export const isTakenBack = ({ requests }: Requests, back: ReadonlySet<string>): boolean =>
  requests.some(({ path }) => back.has(path.slice('/api/movements/'.length)));
