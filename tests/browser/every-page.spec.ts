import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { acceptHandPlan } from './testing/flown-monday.js';
import { openOffice } from './testing/open-office.js';

// openOffice fails a test in which a page asks another host for anything, or says an error on the console.
const office = openOffice({ own: true });

const paths = ['/morning', '/week', '/week/plans', '/caches', '/drums', '/load', '/map', '/set-up'] as const;

const sizes = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
  { width: 400, height: 800 },
] as const;

beforeAll(async () => {
  const manager = await office.api('operations manager');
  await acceptHandPlan({ manager, dataDir: office.dataDir });
});

const openPage = async (page: Page, path: string): Promise<void> => {
  await page.goto(path);
  await page.locator('main#page').getByRole('heading', { level: 1 }).waitFor();
  await page
    .getByText(/^(Opening|Checking)\.\.\.$/)
    .first()
    .waitFor({ state: 'detached' });
};

const widthOf = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth);

describe.each(paths)('%s', (path) => {
  it('reads at every width, in light and dim, without another host, and nothing is cut off at the side', async () => {
    const page = await office.signIn('operations manager');
    await openPage(page, path);
    for (const size of sizes)
      for (const ground of ['light', 'dim']) {
        await page.setViewportSize(size);
        await page.evaluate((value) => {
          document.documentElement.dataset.ground = value;
        }, ground);
        await expectAccessible(page);
        expect(await widthOf(page), `${path} at ${size.width}`).toBe(size.width);
      }
  }, 120_000);
});

describe('the week of the hand plan', () => {
  it('shows four aircraft, their landings and the key at 1440 x 900 without scrolling', async () => {
    const page = await office.signIn('operations manager');
    await openPage(page, '/week');
    await page.getByRole('grid').waitFor();
    const hidden = await page.evaluate(() => {
      const work = document.querySelector('main .work')!;
      const inside = [...work.querySelectorAll('*')].filter(
        (each) => getComputedStyle(each).overflowY === 'auto',
      );
      return [work, ...inside].map((area) => area.scrollHeight - area.clientHeight);
    });
    expect(Math.max(...hidden)).toBeLessThanOrEqual(0);
    await page.getByText('Strip limits').locator('visible=true').waitFor();
    await page.getByText('demo table, revision 12').locator('visible=true').waitFor();
  });

  it('a strip that turns soft marks its flights on a page that is open elsewhere, without being touched', async () => {
    const page = await office.signIn('operations manager');
    await openPage(page, '/week');
    const f05 = page.getByRole('grid').getByRole('button', { name: /\bF05\b/ });
    await f05.waitFor();
    expect(await f05.getByText('Needs a decision').count()).toBe(0);
    const dispatcher = await office.api('dispatcher');
    const report = {
      place: 'XLOR',
      state: 'soft',
      at: '2027-06-14T05:59Z',
      by: 'strip helper',
      untilDate: '2027-06-15',
    };
    const told = Date.now();
    const answer = await dispatcher.put(`/api/surface-reports/${crypto.randomUUID()}`, report);
    expect(answer.status).toBeLessThan(300);
    await f05.getByText('Needs a decision').waitFor();
    process.stdout.write(
      `F05 was marked on the open page ${((Date.now() - told) / 1000).toFixed(1)} s after the report was sent.\n`,
    );
  });
});
