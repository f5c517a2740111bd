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

const openTuesday = async (path = '/map'): Promise<Page> => {
  const page = await office.signIn('dispatcher');
  await page.goto(`${path}?day=2027-06-15`);
  await legs(page).waitFor();
  return page;
};

interface KeptSling {
  readonly id: string;
  readonly version: number;
  readonly data: { readonly to: string; readonly drums: number };
}

const legs = (page: Page) => page.getByRole('table', { name: 'Legs of Tue 15' });
const chart = (page: Page) => page.getByRole('img', { name: /^Tue 15 June 2027: / });

it("Tuesday's flights, their drums and the sling stand on the chart and in the table", async () => {
  const page = await openTuesday();
  // Product.md, section 5: F05 6 drums, F06 4, F07 5; X2 flies without drums; LOR to OGR by sling.
  await page.getByRole('img', { name: 'Tue 15 June 2027: 4 flights, 15 drums; 1 sling move.' }).waitFor();
  for (const words of [
    'F05, 6 drums',
    '150.3 NM',
    'F06, 4 drums',
    'F07, 5 drums',
    'Sling, 4 drums',
    '13.7 NM',
  ])
    await chart(page).getByText(words, { exact: true }).waitFor();
  expect(
    (await legs(page).getByRole('row').allInnerTexts()).slice(1).map((row) => row.split(/[\s]/)[0]),
  ).toEqual(['F05', 'F06', 'F07', 'X2', 'Sling']);
  expect(await page.getByText('A picture for talking, not for navigation').isVisible()).toBe(true);
  await expectAccessible(page);
});

it('a place is found by the arrows, and Enter opens its card', async () => {
  const page = await openTuesday();
  const first = page.getByRole('button', { name: /^XOGR Ogre Pad, pad: 1,600 L, above minimum$/ });
  await first.focus();
  await page.keyboard.press('ArrowDown');
  const lor = page.getByRole('button', { name: /^XLOR Lorn Moss, strip, class 2: 2,145 L, above minimum$/ });
  expect(await lor.evaluate((button) => button === document.activeElement)).toBe(true);
  await page.keyboard.press('Enter');
  const card = page.getByRole('region', { name: 'XLOR Lorn Moss' });
  await card.getByText('1,200 L', { exact: true }).waitFor();
  await card.getByText('XMER 89.0 NM, XALD 150.3 NM').waitFor();
  expect(new URL(page.url()).pathname).toBe('/map/XLOR');
  expect(await lor.getAttribute('aria-pressed')).toBe('true');
  await page.keyboard.press('End');
  await page.keyboard.press('Enter');
  await page.getByRole('region', { name: 'XBIR Birkskar' }).waitFor();
  await expectAccessible(page);
});

it('a one-way strip says from which side it is approached', async () => {
  const page = await openTuesday('/map/XGAN');
  const card = page.getByRole('region', { name: 'XGAN Gannet Saddle' });
  await card.getByText('one way, from 200° true').waitFor();
  await card.getByText('1.1 NM final, at the stream fork').waitFor();
});

it('another day is one key away, with its own flights and levels', async () => {
  const page = await openTuesday();
  await page.keyboard.press(']');
  await page.getByRole('table', { name: 'Legs of Wed 16' }).waitFor();
  await page.getByRole('img', { name: /XMAR 375 L, below minimum/ }).waitFor();
  await page.keyboard.press('[');
  await legs(page).waitFor();
});

it('a strip that turns soft puts its flights in question on the chart that is open', async () => {
  const page = await openTuesday('/map/XLOR');
  const strip = page.getByRole('region', { name: 'XLOR Lorn Moss' });
  await strip.getByText('dry', { exact: true }).waitFor();
  const dispatcher = await office.api('dispatcher');
  const answer = await dispatcher.put(`/api/surface-reports/${crypto.randomUUID()}`, {
    place: 'XLOR',
    state: 'soft',
    at: '2027-06-14T05:59Z',
    by: 'strip helper',
    untilDate: '2027-06-15',
  });
  expect(answer.status).toBeLessThan(300);
  await strip.getByText('soft', { exact: true }).waitFor();
  await chart(page).getByText('F05, 6 drums, needs a decision').waitFor();
  await legs(page).getByRole('row', { name: /^F05/ }).getByText('Needs a decision').waitFor();
});

it('a sling of more drums than stand there without that flight is in question too, and so is the pad it feeds', async () => {
  const page = await openTuesday();
  await chart(page).getByText('Sling, 4 drums', { exact: true }).waitFor();
  await page.getByRole('button', { name: /^XOGR Ogre Pad, pad: 1,600 L, above minimum$/ }).waitFor();
  const manager = await office.api('operations manager');
  const { body } = await manager.get<{ items: readonly KeptSling[] }>('/api/slings');
  const { id, version, data } = body.items.find((kept) => kept.data.to === 'XOGR')!;
  const { status } = await manager.change(`/api/slings/${id}`, version, { ...data, drums: 12 });
  expect(status).toBe(200);
  await chart(page)
    .getByText(/^Sling, (\d+ of )?12 drums \?$/)
    .waitFor();
  await legs(page)
    .getByText(/12 drums, \d+ of a flight that needs a decision$/)
    .waitFor();
  await page.getByRole('button', { name: /^XOGR Ogre Pad, pad: [\d,]+ L \?, above minimum$/ }).waitFor();
  await expectAccessible(page);
  await manager.change(`/api/slings/${id}`, version + 1, data);
  await chart(page).getByText('Sling, 4 drums', { exact: true }).waitFor();
});

it('nothing is cut off at the side, at 1024 and on a phone, in light and dim', async () => {
  const page = await openTuesday('/map/XLOR');
  for (const width of [1024, 400]) {
    await page.setViewportSize({ width, height: 768 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    await expectAccessible(page);
  }
  await page.evaluate(() => {
    document.documentElement.dataset.ground = 'dim';
  });
  await expectAccessible(page);
});

it.each([
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
])('the legs stand whole in the column at $width, also where flights need a decision', async (size) => {
  const page = await office.signIn('dispatcher', size);
  await page.route('**/api/flights?*', async (route) => {
    const response = await route.fetch();
    const answer = (await response.json()) as { readonly items: readonly object[] };
    const needsDecision = 'Batch J27-041 is held: water found in two drums. Aboard: 0523, 0524, 0525.';
    const items = answer.items.map((flight) => ({ ...flight, needsDecision }));
    await route.fulfill({ response, json: { ...answer, items } });
  });
  await page.goto('/map?day=2027-06-15');
  await legs(page).getByText('Needs a decision').first().waitFor();
  // The browser of the tests hides the scroll bar of the column; its room is taken here.
  const over = await page.locator('.map .side').evaluate((side) => {
    const scrollBar = 15;
    const right = Number.parseFloat(getComputedStyle(side).paddingRight);
    (side as HTMLElement).style.paddingRight = `${right + scrollBar}px`;
    return side.scrollWidth - side.clientWidth;
  });
  expect(over).toBe(0);
});
