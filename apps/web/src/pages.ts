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
}

const page = (path: PagePath, name: string, load: () => Promise<ComponentType<PageProps>>): Page => ({
  path,
  name,
  Page: lazy(async () => ({ default: await load() })),
});

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
