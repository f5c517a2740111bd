import { beforeAll, expect, it } from 'vitest';
import type { Client } from '../../apps/server/src/testing/client.js';
import { expectAccessible } from './testing/expect-accessible.js';
import { openLoadDesk } from './testing/load-desk.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });
let manager: Client;
beforeAll(async () => {
  manager = await office.api('operations manager');
  const dispatcher = await office.api('dispatcher');
  await openLoadDesk({ manager, dispatcher, dataDir: office.dataDir });
}, 120_000);

/** By the two who have to, whatever waits. */
const agreeToAll = async () => {
  for (const role of ['operations manager', 'fuel quality'] as const) {
    const person = await office.api(role);
    const { items } = (await person.get<{ items: { id: string }[] }>('/api/proposals')).body;
    for (const { id } of items) await person.put(`/api/proposals/${id}/agreement`, {});
  }
};

it('tie-down of a type: a road figure is refused; what is rated for aircraft is drafted, signed by two, and on the load', async () => {
  const page = await office.signIn('set-up');
  await page.goto('/set-up/tie-down');
  await page.getByRole('button', { name: 'New tie-down' }).click();
  const form = page.getByRole('form', { name: 'New tie-down' });
  await form.getByLabel('Type of aeroplane').fill('B');
  const factors = form.getByRole('group', { name: /^Ultimate load factors/ });
  for (const [label, g] of [
    ['Forward', '9'],
    ['Aft', '2'],
    ['Sideways', '2'],
    ['Up', '4'],
  ] as const)
    await factors.getByLabel(label).fill(g);
  await factors.getByLabel(/^Document and revision/).fill('invented loading manual 7');
  const part = (name: string) => form.getByRole('group', { name, exact: true });
  for (const [name, lb] of [
    ['End fitting', '4000'],
    ['Floor ring', '1500'],
  ] as const)
    await rate(part(name), lb);
  // The kind of figure is asked first; a road figure stays one.
  await part('Strap').getByLabel('Working load limit').fill('3335');
  await form.getByLabel('Above the floor').fill('30');
  await form.getByLabel(/^Off the long axis/).fill('30');
  await form.getByRole('button', { name: 'Save' }).click();
  await part('Strap')
    .getByText(/a working load for the road is no aircraft restraint: give the ultimate load/)
    .waitFor();
  await expectAccessible(page);

  await rate(part('Strap'), '5000');
  await form.getByText(/^Straps for 397 lb: 4 forward, 1 aft, /).waitFor();
  await form.getByText('Planning aid: the approved loading manual decides.').waitFor();
  await form.getByRole('button', { name: 'Save' }).click();
  await page.getByText(/Not in force yet: the tie-down waits for a second person/).waitFor();
  await agreeToAll();

  const load = await office.signIn('dispatcher');
  await load.goto('/load/F05');
  const tied = load.getByRole('region', { name: 'Tie-down' });
  await tied.getByText(/The floor ring decides: 1,500 lb \(invented approval 1\)/).waitFor();
});

const rate = async (part: ReturnType<import('playwright-core').Page['locator']>, lb: string) => {
  await part.getByLabel('Which').selectOption({ label: 'ultimate load in an aircraft' });
  await part.getByLabel('Ultimate load').fill(lb);
  await part.getByLabel(/^Approval, standard or manual/).fill('invented approval 1');
};

it('particulars of dangerous goods: order, wording and contact are the operator’s, seen before they are saved', async () => {
  const page = await office.signIn('set-up');
  await page.goto('/set-up/dangerous-goods');
  const form = page.getByRole('form', { name: /^Dangerous goods/ });
  await form.getByLabel('Emergency contact, day and night').fill('tower 1');
  await form.getByRole('button', { name: 'Move line 2 up' }).click();
  const seen = form.getByRole('table', { name: 'On the sheet of two drums' });
  await seen.getByText('tower 1').waitFor();
  expect((await seen.getByRole('rowheader').allTextContents()).slice(0, 2)).toEqual([
    'Proper shipping name',
    'UN number',
  ]);
  await expectAccessible(page);
  await form.getByRole('button', { name: 'Save' }).click();
  await page.getByText(/Not in force yet: the set of particulars waits for a second person/).waitFor();
  await agreeToAll();

  const load = await office.signIn('dispatcher');
  await load.goto('/load/F05');
  await load.getByText('tower 1').waitFor();
});

it('without figures for the type the load says what is missing and where it is entered', async () => {
  for (const id of ['every type', 'B']) {
    const path = `/api/tie-down/${encodeURIComponent(id)}`;
    const { version } = (await manager.get<{ version: number }>(path)).body;
    await manager.send('DELETE', path, undefined, { headers: { 'If-Match': `"${version}"` } });
  }
  await agreeToAll();
  const load = await office.signIn('dispatcher');
  await load.goto('/load/F05');
  await load.getByText(/No straps are counted: .* for type B\. Set-up, Tie-down\./).waitFor();
});
