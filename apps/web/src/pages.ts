import type { PagePath } from '@drumline/contract';
import { type ComponentType, type LazyExoticComponent, lazy } from 'react';

/** `at`: what the address says after the page's own path: `/load/F05` is `['F05']` on the load page. */
export interface PageProps {
  readonly at: readonly string[];
}

export interface Page {
  readonly path: PagePath;
  readonly name: string;
  readonly Page: LazyExoticComponent<ComponentType<PageProps>>;
  /** Its program, from the server or as it was fetched before. */
  readonly load: () => Promise<ComponentType<PageProps>>;
}

const page = (path: PagePath, name: string, load: Page['load']): Page => ({
  path,
  name,
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
export const fetchPages = (): void => {
  for (const { load } of pages) load().catch(() => {});
};

/** Every page, in the order of the list at the left: Alt and its figure opens it. */
export const pages: readonly Page[] = [
  page('/morning', 'Morning', async () => (await import('./pages/morning/morning-pages.js')).MorningPages),
  page('/week', 'Week', async () => (await import('./pages/week/week-pages.js')).WeekPages),
  page('/caches', 'Caches', async () => (await import('./pages/caches/caches-page.js')).CachesPage),
  page('/drums', 'Drums', async () => (await import('./pages/drums/drums-page.js')).DrumsPage),
  page('/load', 'Load', async () => (await import('./pages/load/load-page.js')).LoadPage),
  page('/map', 'Map', async () => (await import('./pages/map/map-page.js')).MapPage),
  page('/set-up', 'Set-up', async () => (await import('./pages/set-up/set-up-page.js')).SetUpPage),
];
