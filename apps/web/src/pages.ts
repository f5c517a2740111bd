import type { PagePath } from '@drumline/contract';
import { type ComponentType, type LazyExoticComponent, lazy } from 'react';
import { isOfTheOperator, type Me, mayOfAll, mayOfOwnOnly } from './api/session.js';

/** `at`: what the address says after the page's own path: `/load/F05` is `['F05']` on the load page. */
export interface PageProps {
  readonly at: readonly string[];
}

export interface Page {
  readonly path: PagePath;
  readonly name: string;
  /** Whether what it shows is open to the person: others do not see it in the list. */
  readonly isOpenTo: (me: Me) => boolean;
  readonly Page: LazyExoticComponent<ComponentType<PageProps>>;
  /** Its program, from the server or as it was fetched before. */
  readonly load: () => Promise<ComponentType<PageProps>>;
}

const page = (
  [path, name]: readonly [PagePath, string],
  isOpenTo: Page['isOpenTo'],
  load: Page['load'],
): Page => ({
  path,
  name,
  isOpenTo,
  load,
  Page: lazy(async () => ({ default: await onceReached(load) })),
});

/** While base does not answer it is asked again; a program that base no longer has is a fault. */
const onceReached = async <T>(load: () => Promise<T>): Promise<T> => {
  for (;;) {
    try {
      return await load();
    } catch (error) {
      if (await isBaseThere()) throw error;
      await new Promise((resolve) => setTimeout(resolve, 3_000));
    }
  }
};

const isBaseThere = (): Promise<boolean> =>
  fetch('/health').then(
    () => true,
    () => false,
  );

/** So that each page opens when base is out of reach, though nobody has been there yet. */
export const fetchPages = (open: readonly Page[]): void => {
  for (const { load } of open) load().catch(() => {});
};

const seesFlights = (me: Me): boolean => mayOfAll(me, 'approve flight', 'view');
const seesPlans = (me: Me): boolean => mayOfAll(me, 'run plan', 'view');
export const seesOwnFlightsOnly = (me: Me): boolean => mayOfOwnOnly(me, 'approve flight');

/** Every page, in the order of the list at the left. */
export const pages: readonly Page[] = [
  page(
    ['/morning', 'Morning'],
    seesFlights,
    async () => (await import('./pages/morning/morning-pages.js')).MorningPages,
  ),
  page(
    ['/week', 'Week'],
    (me) => seesFlights(me) || seesPlans(me),
    async () => (await import('./pages/week/week-pages.js')).WeekPages,
  ),
  page(
    ['/caches', 'Caches'],
    isOfTheOperator,
    async () => (await import('./pages/caches/caches-page.js')).CachesPage,
  ),
  page(
    ['/drums', 'Drums'],
    isOfTheOperator,
    async () => (await import('./pages/drums/drums-page.js')).DrumsPage,
  ),
  page(
    ['/load', 'Load'],
    (me) => seesFlights(me) || seesOwnFlightsOnly(me),
    async () => (await import('./pages/load/load-page.js')).LoadPage,
  ),
  page(['/map', 'Map'], isOfTheOperator, async () => (await import('./pages/map/map-page.js')).MapPage),
  page(
    ['/set-up', 'Set-up'],
    isOfTheOperator,
    async () => (await import('./pages/set-up/set-up-page.js')).SetUpPage,
  ),
  page(
    ['/programme', 'Own programme'],
    (me) => mayOfOwnOnly(me, 'own programme and litres'),
    async () => (await import('./pages/programme/programme-page.js')).ProgrammePage,
  ),
];

/** Alt and its figure opens each, in this order. */
export const pagesOf = (me: Me): readonly Page[] => pages.filter(({ isOpenTo }) => isOpenTo(me));

/** What opens at no page in particular: a crew's own flights stand on Load. */
export const firstPageOf = (me: Me): Page => {
  const open = pagesOf(me);
  const own = open.find(({ path }) => path === '/load' && seesOwnFlightsOnly(me));
  return own ?? open[0]!;
};
