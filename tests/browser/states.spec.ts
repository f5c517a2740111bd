import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { acceptHandPlan } from './testing/flown-monday.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true, breaksTheLine: true });

/** In the order of the list, with something that only the picture of the page has. */
const pages = [
  ['Morning', 'Decide now'],
  ['Week', 'Strip limits'],
  ['Caches', 'How to read'],
  ['Drums', 'All drums'],
  ['Load', 'Flights with drums'],
  ['Map', 'Places, level'],
  ['Set-up', 'Missing for a plan'],
] as const;

beforeAll(async () => {
  const manager = await office.api('operations manager');
  await acceptHandPlan({ manager, dataDir: office.dataDir });
});

const goTo = async (page: Page, name: string): Promise<void> => {
  await page.keyboard.press(`Alt+${pages.findIndex(([each]) => each === name) + 1}`);
  await page.getByRole('heading', { level: 1, name: new RegExp(name) }).waitFor();
};

const seen = (page: Page, words: string) => page.locator('#page').getByText(words).first();

/** From now on the server answers every question so; what has changed is told by a version that nobody has seen. */
const answer = async (page: Page, how: 'refused' | 'fails' | 'slowly'): Promise<void> => {
  await backAgain(page);
  await page.route('**/api/**', async (route) => {
    if (how === 'refused') return route.abort('connectionrefused');
    if (how === 'slowly') {
      await new Promise((resolve) => setTimeout(resolve, 2_000));
      return route.continue();
    }
    if (!route.request().url().includes('/api/changes'))
      return route.fulfill({ status: 500, contentType: 'text/plain', body: 'out of order' });
    const kinds = ['territory', 'stock', 'flights', 'plans', 'surfaceReports', 'proposals', 'handovers'];
    return route.fulfill({ json: Object.fromEntries(kinds.map((kind) => [kind, String(Date.now())])) });
  });
};

/** Nothing stands on it but its title. */
const isBlank = (page: Page): Promise<boolean> =>
  page.evaluate(() => {
    const main = document.querySelector('main');
    const title = main?.querySelector('h1')?.textContent ?? '';
    return (main?.textContent ?? '').replace(title, '').trim() === '';
  });

const backAgain = (page: Page): Promise<void> => page.unrouteAll({ behavior: 'ignoreErrors' });

/** One person, a tab for each page, all at once: waiting for a line that is cut is waited for once. Every tab begins at Morning. */
const onEach = async (
  named: readonly (readonly [name: string, words: string])[],
  work: (page: Page, name: string, words: string) => Promise<void>,
): Promise<void> => {
  const first = await office.signIn('operations manager');
  const others = await Promise.all(named.slice(1).map(() => first.context().newPage()));
  await Promise.all(others.map((page) => page.goto('/')));
  const done = await Promise.allSettled(
    [first, ...others].map(async (page, at) => {
      page.setDefaultTimeout(30_000);
      await seen(page, 'Decide now').waitFor();
      await work(page, ...named[at]!);
    }),
  );
  const failed = done.map((each, at) =>
    each.status === 'rejected' ? [`${named[at]![0]}: ${String(each.reason)}`] : [],
  );
  expect(failed.flat()).toEqual([]);
};

describe('on every page', () => {
  it('a server that takes 2 s: "Checking..." and then the picture, never a blank page', () =>
    onEach(pages, async (page, name, words) => {
      await answer(page, 'slowly');
      await page.reload();
      await page.getByText('Checking...').first().waitFor();
      await page.getByRole('navigation', { name: 'Pages' }).waitFor();
      await goTo(page, name);
      expect(await isBlank(page)).toBe(false);
      await seen(page, words).waitFor();
      await backAgain(page);
    }));

  it('a server that is stopped: the last picture stays, and since when base is silent', () =>
    onEach(pages, async (page, name, words) => {
      await goTo(page, name);
      await seen(page, words).waitFor();
      await answer(page, 'refused');
      await page.getByText(/^Not with base for \d+ min$/).waitFor();
      await seen(page, words).waitFor();
      await expectAccessible(page);
      // Back again, all is as before without a press.
      await backAgain(page);
      await page.getByText('With base', { exact: true }).waitFor();
    }));

  it('a server that answers 500: the last picture stays, of when it is, and a way to try again', () =>
    onEach(pages, async (page, name, words) => {
      await goTo(page, name);
      await seen(page, words).waitFor();
      await answer(page, 'fails');
      await seen(page, 'You see the picture of').waitFor();
      await seen(page, words).waitFor();
      await page.locator('#page').getByRole('button', { name: 'Try now' }).first().waitFor();
      await expectAccessible(page);
      await backAgain(page);
      await seen(page, 'You see the picture of').waitFor({ state: 'detached' });
    }));

  it('that was seen once, and opened again after a load by address without the server: its last picture', async () => {
    const page = await office.signIn('operations manager');
    for (const [name, words] of pages) {
      await goTo(page, name);
      await seen(page, words).waitFor();
    }
    await page.goto('/caches');
    await seen(page, 'How to read').waitFor();
    await page.context().setOffline(true);
    for (const [name, words] of pages) {
      await goTo(page, name);
      await seen(page, words).waitFor({ timeout: 20_000 });
      await page.getByText('Hollowtarn Uplands').first().waitFor();
      if (name === 'Set-up') continue;
      await seen(page, 'You see the picture of').waitFor({ timeout: 20_000 });
      if (name !== 'Morning') continue;
      await page.getByRole('button', { name: /^Handover/ }).click();
      await page.getByRole('dialog', { name: 'Handover' }).waitFor();
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: /^Medevac/ }).click();
      await page.getByRole('dialog', { name: 'Medevac: fuel now' }).waitFor();
      await page.keyboard.press('Escape');
    }
    await page.context().setOffline(false);
    await page.getByText('With base', { exact: true }).waitFor();
  }, 180_000);

  it('loaded anew, or opened by its address, while the server is stopped: its last picture, and as before when base is back', async () => {
    const page = await office.signIn('operations manager');
    page.setDefaultTimeout(20_000);
    for (const [name, words] of pages) {
      await goTo(page, name);
      await seen(page, words).waitFor();
    }
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await office.halt();
    for (const path of ['/week', '/caches', '/morning']) {
      await page.goto(path);
      const [name, words] = pages.find(([each]) => path === `/${each.toLowerCase()}`)!;
      await page.getByRole('heading', { level: 1, name: new RegExp(name) }).waitFor();
      await seen(page, words).waitFor();
      await seen(page, 'You see the picture of').waitFor();
      await page.getByText(/^Not with base for \d+ min$/).waitFor();
    }
    await page.reload();
    await seen(page, 'Decide now').waitFor();
    const kept = await page.evaluate(async () => {
      const names = (await caches.keys()).filter((name) => name.startsWith('drumline.office.'));
      const all = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
      return all.flat().map(({ url }) => new URL(url).pathname);
    });
    expect(kept.filter((path) => path !== '/' && !path.startsWith('/assets/'))).toEqual([]);
    await office.startAgain();
    await page.getByText('With base', { exact: true }).waitFor();
    await seen(page, 'You see the picture of').waitFor({ state: 'detached' });
    // An entry goes through: the key of the session, which is not kept, has come again.
    await page.keyboard.press('r');
    const dialog = page.getByRole('dialog', { name: 'Radio report' });
    await dialog.waitFor();
    await page.keyboard.type('LOR dry 0555 J. Holm');
    await dialog.getByText(/Counts today/).waitFor();
    await page.keyboard.press('Enter');
    await page
      .getByText(/XLOR dry.*entered/i)
      .first()
      .waitFor();
  }, 180_000);

  it('of one person are not shown to the next at the same machine', async () => {
    const page = await office.signIn('operations manager');
    await seen(page, 'Decide now').waitFor();
    await page.getByRole('button', { name: /operations manager$/ }).click();
    await page.getByRole('button', { name: 'Sign out' }).click();
    await page.getByLabel('Password').waitFor();
    const kept = await page.evaluate(() => caches.keys());
    expect(kept.filter((name) => !name.startsWith('drumline.office.'))).toEqual([]);
  });

  it('that was never opened before the server stopped: what, why and what next; its picture as soon as base answers', () =>
    onEach(pages.slice(1), async (page, name, words) => {
      await answer(page, 'refused');
      await goTo(page, name);
      await seen(page, 'Could not reach base store').waitFor();
      if (name !== 'Set-up') await seen(page, 'You have not seen this on this machine yet').waitFor();
      await expectAccessible(page);
      await backAgain(page);
      await seen(page, words).waitFor();
    }));
});

it('a radio report that base cannot hear is kept on this machine, told as waiting, and sent by itself', async () => {
  const page = await office.signIn('dispatcher');
  await seen(page, 'Decide now').waitFor();
  await page.keyboard.press('r');
  const dialog = page.getByRole('dialog', { name: 'Radio report' });
  await page.keyboard.type('ISK soft 0540 J. Holm');
  await dialog.getByText(/Counts today/).waitFor();
  await answer(page, 'refused');
  await page.keyboard.press('Enter');
  await dialog.getByText(/Kept on this machine until base has it: XISK soft/).waitFor();
  await page.getByText('1 entry waiting').waitFor();
  await backAgain(page);
  await page.getByText('No entries waiting').waitFor({ timeout: 20_000 });
  const dispatcher = await office.api('dispatcher');
  const { body } = await dispatcher.get<{ items: { data: { place: string; by: string } }[] }>(
    '/api/surface-reports?limit=1',
  );
  expect(body.items[0]!.data).toMatchObject({ place: 'XISK', by: 'J. Holm, by radio' });
}, 60_000);
