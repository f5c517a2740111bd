/** Where the pages are. The server answers these, and what stands below them, with the pages' program. */
export const pagePaths = [
  '/morning',
  '/week',
  '/caches',
  '/drums',
  '/load',
  '/map',
  '/set-up',
  '/programme',
] as const;

export type PagePath = (typeof pagePaths)[number];
