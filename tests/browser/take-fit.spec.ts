import { randomUUID } from 'node:crypto';
import type { LoadAnswer } from '@drumline/contract';
import type { Page } from 'playwright-core';
import { beforeAll, expect, it } from 'vitest';
import type { Client } from '../../apps/server/src/testing/client.js';
import { expectAccessible } from './testing/expect-accessible.js';
import { acceptHandPlan } from './testing/flown-monday.js';
import { openOffice } from './testing/open-office.js';

// F01 of the hand plan is with its pilot; then the batch of its first drum is held.
const office = openOffice({ own: true });
let dispatcher: Client;
beforeAll(async () => {
  dispatcher = await office.api('dispatcher');
  const manager = await office.api('operations manager');
  await acceptHandPlan({ manager, dataDir: office.dataDir });
  await act('F01', 'approve');
  await act('F01', 'give');
  const { batch } = (await onLoad()).load!.sheet.drums[0]!;
  const minute = '2027-06-14T06:00Z';
  const held = await dispatcher.put(`/api/movements/${randomUUID()}`, {
    ...{ kind: 'held', happenedAt: minute, writtenAt: minute, means: 'screen' },
    ...{ of: { batch }, reason: 'water' },
  });
  expect(held.status).toBe(200);
}, 120_000);

const act = async (id: string, name: string, body: object = {}): Promise<void> => {
  const { revision } = (await dispatcher.get<{ revision: number }>(`/api/flights/${id}`)).body;
  const headers = { 'If-Match': `"${revision}"` };
  expect((await dispatcher.post(`/api/flights/${id}/${name}`, body, { headers })).status).toBe(200);
};

const onLoad = async (): Promise<LoadAnswer> =>
  (await dispatcher.get<LoadAnswer>('/api/flights/F01/sheet')).body;

const heldWords = (held: readonly string[]): string =>
  held.length === 1 ? '1 drum' : `${held.length} drums`;

const openLoad = async (): Promise<Page> => {
  const page = await office.signIn('dispatcher');
  await page.goto('/load/F01');
  await page.getByRole('heading', { name: 'F01, load' }).waitFor();
  return page;
};

it('the decision card says how many drums are on HOLD and leads to Load; there it says which offered flights have the fit ones', async () => {
  const { held, setAside } = (await onLoad()).insteadOfHeld!;
  const page = await office.signIn('dispatcher');
  await page.goto('/week/F01');
  const card = page.getByRole('complementary', { name: 'Decision card' });
  await card.getByText(`${heldWords(held)} on HOLD.`).waitFor();
  await expectAccessible(page);
  await card.getByRole('link', { name: 'Load of F01' }).click();
  const take = page.getByRole('button', { name: `Take ${held.length} fit` });
  await take.waitFor();
  expect(await take.getAttribute('aria-disabled')).toBe('true');
  expect(setAside.length).toBeGreaterThan(0);
  const whose = setAside.map(({ flight, drums }) => `${drums} for ${flight}`).join(', ');
  await page
    .getByText(`no fit drum stands free at XMER. Fit ones there are set aside for offered flights: ${whose}.`)
    .waitFor();
  await expectAccessible(page);
});

it('once an offered flight lets its drums go, all held ones are swapped for them at once; a new version goes to the pilot', async () => {
  const page = await openLoad();
  for (const { flight } of (await onLoad()).insteadOfHeld!.setAside)
    await act(flight, 'decline', { reason: 'weather' });
  const { insteadOfHeld, version } = await onLoad();
  const { held, fit } = insteadOfHeld!;
  expect(fit).toHaveLength(held.length);
  await page
    .getByRole('button', { name: `Take ${held.length} fit` })
    .getByText(fit[0]!)
    .waitFor();
  await page.keyboard.press('f');
  const form = page.getByRole('form', { name: `Take ${fit.length} fit` });
  await form.getByText(`On HOLD, stays at XMER: ${held.join(', ')}.`).waitFor();
  await form.getByText(`Goes instead, the oldest fit: ${fit.join(', ')}.`).waitFor();
  await expectAccessible(page);
  await form.getByRole('button', { name: `Make it version ${version + 1}` }).click();
  await form.waitFor({ state: 'detached' });
  await page.getByText('On HOLD').waitFor({ state: 'detached' });
  await page.getByText('Needs a decision').first().waitFor({ state: 'detached' });
  const after = await onLoad();
  expect([after.version, after.insteadOfHeld, after.needsDecision]).toEqual([version + 1, null, null]);
  const aboard = after.load!.sheet.drums.map(({ number }) => number);
  expect(aboard).toEqual(expect.arrayContaining([...fit]));
  expect(aboard.filter((number) => held.includes(number))).toEqual([]);
  for (const number of fit) await page.getByText(number).first().waitFor();
});
