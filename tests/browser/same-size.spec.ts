import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { acceptHandPlan } from './testing/flown-monday.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

// By the names in the list of pages.
const pages = ['Morning', 'Week', 'Caches', 'Drums', 'Load', 'Map', 'Set-up'] as const;

beforeAll(async () => {
  const manager = await office.api('operations manager');
  await acceptHandPlan({ manager, dataDir: office.dataDir });
});

const go = async (page: Page, name: (typeof pages)[number]): Promise<void> => {
  await page.keyboard.press(`Alt+${pages.indexOf(name) + 1}`);
  await page.getByRole('heading', { level: 1, name: new RegExp(name) }).waitFor();
  await expect.poll(() => page.getByText(/^(Opening|Checking)\.\.\.$/).count(), { timeout: 10_000 }).toBe(0);
  await page.waitForLoadState('networkidle');
};

/** Every box of the page that has a class, with its size. */
const boxesOf = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('main#page [class]')].map(
      (each) => `${each.className.toString()} ${each.clientWidth} x ${each.clientHeight}`,
    ),
  );

describe('the looks of a page that was opened stay loaded with the next ones', () => {
  it.each(pages)(
    '%s has its boxes in the same size after every other page',
    async (name) => {
      const page = await office.signIn('operations manager');
      await page.goto(`/${name.toLowerCase()}`);
      await go(page, name);
      const first = await boxesOf(page);
      for (const other of pages) await go(page, other);
      await go(page, name);
      expect(await boxesOf(page)).toEqual(first);
    },
    60_000,
  );
});
