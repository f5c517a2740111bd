/** The lists of the page, in the order in which they stand. */
export const views = [
  ['all', 'All drums'],
  ['fill', 'To fill'],
  ['pick', 'To pick by flight'],
  ['held', 'Held'],
  ['retest', 'Retest coming'],
  ['open', 'Open drums'],
  ['empties', 'Empties'],
  ['elsewhere', 'Aboard, or not known'],
  ['raised', 'Raised'],
  ['ledger', 'Ledger'],
] as const;

export type View = (typeof views)[number][0];

export const viewOf = (word: string | null): View => views.find(([view]) => view === word)?.[0] ?? 'all';

/** What is done in the area at the right instead of a drum. */
export const acts = ['hold', 'fill', 'count', 'join'] as const;
export type PageAct = (typeof acts)[number];

export const actOf = (word: string | null): PageAct | null => acts.find((act) => act === word) ?? null;
