import { randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });
const aMinute = { timeout: 60_000 };

it('a search is stopped with the best so far; Accept is refused when a strip has closed since, with what changed', async () => {
  const page = await office.signIn('operations manager');
  await page.keyboard.press('Alt+2');
  await page.getByRole('heading', { level: 1, name: 'Week' }).waitFor();
  await page.keyboard.press('p');
  const options = page.getByRole('dialog', { name: /^Plan the week from now/ });
  await options.getByText('No flights stand: the plan begins anew.').waitFor();

  await options.getByLabel('Search for').fill('0');
  await options.getByText('Fault: a whole number of seconds from 1 to 600.').waitFor();
  await page.keyboard.press('Enter');
  expect(await options.isVisible()).toBe(true);
  await options.getByLabel('Search for').fill('300');
  await options.getByLabel('Why').fill('first plan of the season');
  await page.keyboard.press('Enter');

  await page.getByRole('img', { name: /After \d+ s: best [\d,]+ cr/ }).waitFor(aMinute);
  // Whoever opens the week meanwhile is led to it.
  await page.getByRole('button', { name: 'Back to Week' }).click();
  await page.getByRole('button', { name: /Plan under way/ }).click(aMinute);
  await page.getByRole('button', { name: /Stop, keep the best so far/ }).click();
  await page.getByRole('heading', { level: 1, name: 'Differences' }).waitFor(aMinute);
  await page.getByText('stopped, best so far kept').waitFor();
  await page.getByText(/^\d+ flights land \d+ drums for [\d,]+ cr; no plan stood before\.$/).waitFor();
  await expectAccessible(page);

  const dispatcher = await office.api('dispatcher');
  const closed = { place: 'XLOR', state: 'closed', at: '2027-06-14T06:00Z', untilDate: '2027-06-20' };
  const kept = await dispatcher.put(`/api/surface-reports/${randomUUID()}`, {
    ...closed,
    by: 'strip helper',
  });
  expect(kept.status).toBe(200);
  await page.keyboard.press('y');
  const refusal = page.getByRole('alert');
  await refusal.getByText(/surface report, new: XLOR closed/).waitFor();
  await refusal
    .getByText(/XLOR is reported closed/)
    .first()
    .waitFor();
  const { body } = await dispatcher.get<{ items: unknown[] }>('/api/flights');
  expect(body.items).toEqual([]);

  await page.getByRole('button', { name: /^Plans/ }).click();
  await page.getByRole('row', { name: /first plan of the season.*stopped, best so far kept/ }).waitFor();
  await expectAccessible(page);
}, 200_000);

it('whoever may not plan looks at plans, and has nothing to press', async () => {
  const page = await office.signIn('accounts');
  await page.goto(`${office.url}/week/plans`);
  await page.getByRole('link', { name: '06:00' }).click();
  await page.getByRole('table', { name: 'Differences, line by line' }).waitFor();
  expect(await page.getByRole('button', { name: /Accept|Re-plan/ }).count()).toBe(0);
});

it('a plan under way is discarded: what is lost stands beside the button, and no plan is kept', async () => {
  const page = await office.signIn('operations manager');
  const manager = await office.api('operations manager');
  const id = randomUUID();
  await manager.put(`/api/plans/${id}`, { seconds: 300, seed: 5, note: 'to be discarded' });
  await page.goto(`${office.url}/week/compare/${id}`);
  const graph = page.getByRole('img', { name: /After \d+ s: best [\d,]+ cr/ });
  await graph.waitFor(aMinute);
  await graph.getByText(/^first [\d,]+ cr$/).waitFor();
  expect(await graph.getByText(/^[\d,]+ cr$/).count()).toBeGreaterThan(1);
  await page.getByText(/^Discard keeps no plan: what was found is lost\./).waitFor();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Discard' }).click();
  await page.getByText('Stopped, no plan kept.').waitFor(aMinute);
  await page.getByRole('button', { name: /^Plans/ }).click();
  await page.getByRole('row', { name: /to be discarded.*stopped, no plan kept/ }).waitFor();
}, 120_000);
