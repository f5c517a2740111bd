import { gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { openOffice, signInAt } from './testing/open-office.js';

const office = openOffice();

it('a dispatcher signs in and sees the day, the line to base and the pages', async () => {
  const page = await office.signIn('dispatcher');
  const top = page.getByRole('banner').first();
  await top.getByText('Mon 14 June 2027').waitFor();
  await top.getByText('With base').waitFor();
  await top.getByText('No entries waiting').waitFor();
  expect(
    (await page.getByRole('navigation', { name: 'Pages' }).getByRole('link').allInnerTexts()).map((text) =>
      text.replace(/\s+/g, ' '),
    ),
  ).toEqual(['1 Morning', '2 Week', '3 Caches', '4 Drums', '5 Load', '6 Map', '7 Set-up']);
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Morning');
  await expectAccessible(page);
});

it('says no day and draws no picture until the clock of the territory is known: that of this machine is another day', async () => {
  const page = await office.signIn('dispatcher');
  let letGo = () => {};
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  await page.route('**/api/clock', async (route) => {
    await held;
    await route.continue();
  });
  await page.evaluate(async () => {
    for (const name of await caches.keys()) await caches.delete(name);
  });
  const year = String(new Date().getFullYear());
  for (const path of ['morning', 'week', 'load', 'map', 'drums']) {
    const answered = page.waitForResponse(/\/api\/settings\/current/);
    await page.goto(`${office.url}/${path}`);
    await answered;
    await page.getByText('Hollowtarn').first().waitFor();
    await page.getByText('Checking...').first().waitFor();
    const said = await page.locator('body').textContent();
    expect(said).not.toContain('Operating date');
    expect(said).not.toContain(year);
  }
  letGo();
  await page.getByText('Operating date').waitFor();
  await page.getByRole('banner').first().getByText('Mon 14 June 2027').waitFor();
  await page.getByRole('main').getByText('Mon 14 June 2027').first().waitFor();
});

it('Alt and a figure opens a page, with the focus on it', async () => {
  const page = await office.signIn('dispatcher');
  await page.keyboard.press('Alt+2');
  await page.getByRole('heading', { level: 1, name: 'Week' }).waitFor();
  expect(page.url()).toBe(`${office.url}/week`);
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('page');
  expect(await page.title()).toBe('Week, Drumline');
});

it('single keys can be switched off, and stay off for this person', async () => {
  const page = await office.signIn('dispatcher');
  await page.keyboard.press('?');
  const dialog = page.getByRole('dialog');
  await dialog.waitFor();
  await dialog.getByRole('row', { name: /^Esc Closes what is open/ }).waitFor();
  await expectAccessible(page);
  await dialog.getByLabel('Single keys').uncheck();
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'detached' });
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Morning' }).waitFor();
  await page.keyboard.press('?');
  expect(await dialog.count()).toBe(0);
});

it('dim is kept, and is as readable as light', async () => {
  const page = await office.signIn('dispatcher');
  await page.getByRole('button', { name: /Demo dispatcher/ }).click();
  await page.getByLabel(/Dim/).check();
  await page.keyboard.press('Escape');
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Morning' }).waitFor();
  expect(await page.evaluate(() => document.documentElement.dataset.ground)).toBe('dim');
  await expectAccessible(page);
});

it('on a phone the list of pages is a line at the top, and nothing is cut off at the side', async () => {
  const page = await office.signIn('dispatcher', { width: 360, height: 640 });
  await page.getByRole('heading', { level: 1, name: 'Morning' }).waitFor();
  await expectAccessible(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
});

it('a wrong password is said, with what to do, and lets nobody in', async () => {
  const page = await office.stranger();
  await expectAccessible(page);
  await page.getByLabel('Name').fill('dispatcher');
  await page.getByLabel('Password').fill('not the password');
  await page.keyboard.press('Enter');
  await page.getByRole('alert').getByText('The name or the password is wrong.').waitFor();
  expect(await page.getByRole('navigation').count()).toBe(0);
});

it('a session that ends leaves the page where it is, and it goes on after signing in again', async () => {
  const page = await office.signIn('storekeeper');
  await page.keyboard.press('Alt+4');
  await page.getByRole('heading', { level: 1, name: 'Drums' }).waitFor();
  await page.context().clearCookies();
  const dialog = page.getByRole('dialog', { name: 'Sign in again' });
  await dialog.waitFor();
  await dialog.getByLabel('Password').fill('a password for tests');
  await page.keyboard.press('Enter');
  await dialog.waitFor({ state: 'detached' });
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Drums');
});

it('a line that is cut is said with its time, and heard again by itself', async () => {
  const page = await office.signIn('dispatcher');
  const top = page.getByRole('banner').first();
  await top.getByText('Mon 14 June 2027').waitFor();
  await page.context().setOffline(true);
  await top.getByText(/Not with base for \d+ min/).waitFor();
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Morning');
  await page.context().setOffline(false);
  await top.getByText('With base', { exact: true }).waitFor();
});

it('signing out leaves nothing of the person on the page', async () => {
  const page = await office.signIn('dispatcher');
  await page.getByRole('button', { name: /Demo dispatcher/ }).click();
  await page.getByRole('button', { name: 'Sign out' }).click();
  await page.getByRole('button', { name: 'Sign in' }).waitFor();
  expect(await page.getByText('dispatcher').count()).toBe(0);
  expect((await page.request.get('/api/me')).status()).toBe(401);
});

it('an address of nothing says so in the office, with the ways on', async () => {
  const page = await office.signIn('dispatcher');
  await page.goto('/nowhere/F05');
  await page.getByText('There is no page at /nowhere/F05.').waitFor();
  await expectAccessible(page);
  await page.locator('#page').getByRole('link', { name: 'Week' }).click();
  await page.getByRole('heading', { level: 1, name: 'Week' }).waitFor();
});

it('is served with a policy that lets nothing inline and nothing foreign run', async () => {
  const page = await office.stranger();
  const answer = await page.request.get('/week');
  const policy = answer.headers()['content-security-policy']!;
  expect(policy).toContain("script-src 'self'");
  expect(policy).not.toMatch(/unsafe|https?:|\*/);
});

it('the first page takes less than 350 kB of program, compressed', async () => {
  const page = await office.stranger();
  const sizes: Promise<number>[] = [];
  page.on('response', (answer) => {
    if (/\.js$/.test(answer.url())) sizes.push(answer.body().then((body) => gzipSync(body).length));
  });
  await signInAt(page, 'dispatcher');
  await page.getByRole('heading', { level: 1, name: 'Morning' }).waitFor();
  const total = (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0);
  expect(total).toBeGreaterThan(50_000);
  expect(total).toBeLessThan(350_000);
});
