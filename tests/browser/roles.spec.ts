import type { Role } from '@drumline/contract';
import type { Page } from 'playwright-core';
import { beforeAll, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { acceptHandPlan } from './testing/flown-monday.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

beforeAll(async () => {
  const manager = await office.api('operations manager');
  await acceptHandPlan({ manager, dataDir: office.dataDir });
});

const everything = ['Morning', 'Week', 'Caches', 'Drums', 'Load', 'Map', 'Set-up'];
const ofCrews = ['Caches', 'Drums', 'Load', 'Map', 'Set-up'];

const listed = (page: Page) => page.getByRole('navigation', { name: 'Pages' }).getByRole('listitem');

const namesIn = async (page: Page): Promise<readonly string[]> =>
  (await listed(page).allTextContents()).map((name) => name.replace(/^\d/, ''));

/** Paths of the API that the server refused to this person. */
const refusedTo = (page: Page): string[] => {
  const refused: string[] = [];
  page.on('response', (answer) => {
    if (answer.status() === 403) refused.push(new URL(answer.url()).pathname);
  });
  return refused;
};

it.each<[Role, readonly string[]]>([
  ['operations manager', everything],
  ['dispatcher', everything],
  ['storekeeper', everything],
  ['fuel quality', everything],
  ['accounts', everything],
  ['pilot', ofCrews],
  ['helicopter crew', ofCrews],
  ['engineering', ['Week', 'Caches', 'Drums', 'Map', 'Set-up']],
  ['set-up', ['Caches', 'Drums', 'Map', 'Set-up']],
])('%s: the list holds the pages that are open, and nothing of them is refused', async (role, pages) => {
  const page = await office.signIn(role);
  expect(await namesIn(page)).toEqual(pages);
  const refused = refusedTo(page);
  for (const name of pages) {
    await listed(page).getByRole('link', { name }).click();
    await page.locator('main#page').getByRole('heading', { level: 1 }).waitFor();
    await page.waitForLoadState('networkidle');
    expect(await page.getByText('Not allowed').count(), `${role} at ${name}`).toBe(0);
  }
  expect(refused).toEqual([]);
});

it('a pilot begins at own flights, is led to the phone page, and is told so at Morning', async () => {
  const page = await office.signIn('pilot');
  await page.getByRole('heading', { level: 1, name: 'Load' }).waitFor();
  await page.getByText(/^These are your own flights/).waitFor();
  const commanders = page.getByRole('table', { name: 'Flights with drums' }).getByText(/^FW\d$/);
  await commanders.first().waitFor();
  expect(new Set(await commanders.allTextContents())).toEqual(new Set(['FW1']));
  await page.goto('/morning');
  await page.getByText('Morning is not open to pilot. It shows every flight; you see your own.').waitFor();
  expect(await page.getByRole('link', { name: 'Print day pack' }).count()).toBe(0);
  await expectAccessible(page);
  await page
    .getByRole('navigation')
    .getByText(/It has a sign-in of its own/)
    .waitFor();
  await page.getByRole('navigation').getByRole('link', { name: 'Phone page' }).click();
  await page.waitForURL(/\/phone\b/);
  await page.getByText(/^Sign in once with a signal/).waitFor();
  await page.goto('/phone'); // As it is said by radio.
  await page.waitForURL(/\/phone\/$/);
});

it('engineering opens the plans and their differences, as the permission table says', async () => {
  const page = await office.signIn('engineering');
  await page.getByRole('heading', { level: 1, name: 'Plans' }).waitFor();
  const refused = refusedTo(page);
  await page.getByRole('table', { name: 'Plans' }).getByRole('link').first().click();
  await page.getByRole('table', { name: 'Differences, line by line' }).waitFor();
  await page.waitForLoadState('networkidle');
  expect(refused).toEqual([]);
  expect(await page.getByRole('button', { name: 'Back to Week' }).count()).toBe(0);
});

it('a storekeeper opens a flight on Load', async () => {
  const page = await office.signIn('storekeeper');
  await page.goto('/load');
  await page.getByRole('table', { name: 'Flights with drums' }).getByRole('link').first().click();
  await page.getByRole('heading', { level: 1, name: /, load$/ }).waitFor();
  expect(await page.getByText('Not allowed').count()).toBe(0);
});

it("a customer's field leader sees own tasks, own litres and the levels of caches in words", async () => {
  const page = await office.signIn('field leader');
  await page.getByRole('heading', { level: 1, name: 'Own programme' }).waitFor();
  expect(await namesIn(page)).toEqual(['Own programme']);
  const tasks = page.getByRole('table', { name: 'Tasks of P1, as planned' });
  await tasks.getByText('Mon 14 June 2027').first().waitFor();
  await tasks.getByText('450 L').first().waitFor();
  await page.getByText('Nothing has been drawn for P1 yet.').waitFor();
  const levels = page.getByRole('table', { name: /^Fuel at the caches/ });
  await levels.getByText('Enough').first().waitFor();
  expect(await levels.getByText(/\d/).count()).toBe(0);
  await expectAccessible(page);
  await page.goto('/week');
  await page.getByText(/^Week is not open to field leader\. You see your own programme/).waitFor();
});
