import { randomUUID } from 'node:crypto';
import type { Page } from 'playwright-core';
import { beforeAll, expect, it } from 'vitest';
import type { Client } from '../../apps/server/src/testing/client.js';
import { expectAccessible } from './testing/expect-accessible.js';
import { type LoadDesk, openLoadDesk } from './testing/load-desk.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });
let dispatcher: Client;
let desk: LoadDesk;
beforeAll(async () => {
  dispatcher = await office.api('dispatcher');
  const manager = await office.api('operations manager');
  desk = await openLoadDesk({ manager, dispatcher, dataDir: office.dataDir });
  await desk.act('F05', 'approve');
  await desk.act('F05', 'give');
  await surface('soft', '2027-06-14T05:58Z');
}, 120_000);

const openF05 = async (): Promise<Page> => {
  const page = await office.signIn('dispatcher');
  await page.goto('/load/F05');
  await page.getByRole('heading', { name: 'F05, load' }).waitFor();
  return page;
};

const surface = async (state: 'dry' | 'soft', at: string) => {
  const report = { place: 'XLOR', state, at, by: 'strip helper', untilDate: '2027-06-16' };
  expect((await dispatcher.put(`/api/surface-reports/${randomUUID()}`, report)).status).toBe(200);
};

/** Both totals as the sheet has them, and who loaded and checked. */
const sign = async (page: Page): Promise<void> => {
  for (const [label, lb] of [
    ['By hand', '2378'],
    ['By the aircraft', '8528'],
  ] as const) {
    await page.getByLabel(label).fill(lb);
    await page.getByLabel(label).press('Enter');
  }
  await page.getByText('8,528 lb and 8,528 lb: the same.').waitFor();
  await page.getByRole('textbox', { name: 'Loaded by' }).fill('T. Orrin');
  await page.getByLabel('Checked by').fill('K. Aske');
};

const stateOf = async () => (await dispatcher.get<{ state: string }>('/api/flights/F05')).body.state;

/** At both widths, light and dim; never wider than the window. */
const look = async (page: Page, name: string): Promise<void> => {
  for (const width of [1440, 1024]) {
    await page.setViewportSize({ width, height: 900 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    for (const ground of ['light', 'dim']) {
      await page.evaluate((it) => document.documentElement.setAttribute('data-ground', it), ground);
      await expectAccessible(page);
      if (process.env.SHOTS)
        await page.screenshot({
          path: `${process.env.SHOTS}/${name}-${width}-${ground}.png`,
          fullPage: true,
        });
    }
  }
};

const standsSo = 'It stands so in the aeroplane: keep and raise it';

it('XLOR is reported soft after F05 was given: Loaded is off, and that it stands so is kept and raised on Morning', async () => {
  const page = await openF05();
  await page.getByText('The load does not hold.', { exact: true }).waitFor();
  expect(await page.getByRole('button', { name: standsSo }).count()).toBe(0);
  await desk.act('F05', 'mark', { reason: 'the camp is not ready' });
  await sign(page);
  const loaded = page.getByRole('button', { name: 'Loaded', exact: true });
  await page.getByText(/^Loaded is off: the load does not hold, see above/).waitFor();
  expect(await loaded.getAttribute('aria-disabled')).toBe('true');
  await look(page, 'stands-so');
  await page.getByRole('button', { name: standsSo }).click();
  await page.getByText('Kept and raised, not entered as loaded').waitFor();
  expect(await page.getByLabel('By hand').inputValue()).toBe('');
  expect(await stateOf()).toBe('given');
  await look(page, 'stands-so-kept');

  await page.goto('/morning');
  const raised = page.getByText(/^F05: loaded all the same with 04\d\d, .*not entered as loaded/);
  await raised.waitFor();
  expect(await raised.textContent()).toContain('XALD-XLOR: 531 lb over XLOR strip landing limit 7,600 lb');
  await look(page, 'stands-so-morning');
});

it('XLOR is dry again, its mark gone; what the mark of a person refuses may be kept as it stands too; once base has decided, it is entered as loaded', async () => {
  const page = await openF05();
  await sign(page);
  await page.getByRole('button', { name: standsSo }).click();
  await page.getByText('Kept and raised, not entered as loaded').waitFor();
  await surface('dry', '2027-06-14T05:59Z');
  await page.getByText('The load does not hold.', { exact: true }).waitFor({ state: 'detached' });
  expect(await page.getByRole('button', { name: standsSo }).count()).toBe(0);
  await desk.act('F05', 'mark', { reason: 'the camp is not ready' });
  await sign(page);
  const loaded = page.getByRole('button', { name: 'Loaded', exact: true });
  await loaded.click();
  await page
    .getByText(/the decision it needs has to be taken first \(the camp is not ready\)/)
    .first()
    .waitFor();
  await page.getByRole('button', { name: standsSo }).waitFor();
  await desk.act('F05', 'keep', { reason: 'dry again' });
  await loaded.click();
  await page
    .getByRole('region', { name: /^Loaded by version/ })
    .first()
    .waitFor();
  expect(await stateOf()).toBe('loaded');
});
