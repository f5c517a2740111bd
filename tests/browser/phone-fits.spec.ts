import { randomUUID } from 'node:crypto';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { Phone } from './testing/phone.js';
import { openPhoneDesk, spoken, typeOn } from './testing/phone-desk.js';
import { aboveKeys, expectFits, expectInView, expectNothingLost } from './testing/phone-fit.js';

const { office, crewMember, phoneOf, newPhone, shot } = openPhoneDesk();

/** Every page of the pilot's phone that is opened by its path, and a word that is on it. */
const pages = [
  ['day', '/', 'Check now'],
  ['leg-out', '/F06/1', 'Go back if'],
  ['leg-home', '/F06/2', 'If XMER closes'],
  ['left-here', '/F06/left/1/XGAN', 'All 4, good'],
  ['bring-back', '/F06/back/1/XGAN', 'Another drum'],
  ['elsewhere', '/F06/elsewhere/1', 'Any place counts.'],
  ['problem', '/F06/problem/1', 'I will not fly this'],
  ['surface', '/surface/XGAN', 'wheels leave ruts'],
  ['square', '/F06/square', 'check code'],
  ['sent', '/sent', 'Nothing reported on this phone yet.'],
  ['you', '/you', 'Sign out'],
  ['nothing-there', '/F99/1', 'No such leg on this phone.'],
] as const;

const open = async ({ page }: Phone, path: string, word: string): Promise<void> => {
  await page.evaluate((to) => (window.location.hash = `#${to}`), path);
  await page.getByText(word).first().waitFor();
};

const shots = async (phone: Phone, name: string): Promise<void> => {
  await shot(phone, `phone-${name}`);
  if (!process.env.SHOTS) return;
  const before = phone.page.viewportSize()!;
  for (const size of [
    { width: 320, height: 568 },
    { width: 640, height: 360 },
  ]) {
    await phone.page.setViewportSize(size);
    await shot(phone, `phone-${name}-${size.width}`);
  }
  await phone.page.setViewportSize(before);
};

/** Half of the smallest phone, less its status line. */
const leastToRead = 568 / 2 - 26;

const heightOfReading = async (page: Page): Promise<number> => {
  const before = page.viewportSize()!;
  await page.setViewportSize({ width: 320, height: 568 });
  const height = await page.evaluate(
    () => document.querySelector('.reading')!.getBoundingClientRect().height,
  );
  await page.setViewportSize(before);
  return height;
};

it('every page fits a small phone, a tall one and one on its side: nothing is cut off or under the acts', async () => {
  const stranger = await newPhone();
  await stranger.page.goto('/phone/');
  await stranger.page.getByRole('button', { name: 'Sign in' }).waitFor();
  await expectFits(stranger.page, 'sign-in');
  await shot(stranger, 'phone-sign-in');
  const phone = await phoneOf('pilot');
  for (const [name, path, word] of pages) {
    await open(phone, path, word);
    await expectFits(phone.page, name);
    expect([name, (await heightOfReading(phone.page)) > leastToRead]).toEqual([name, true]);
    await shots(phone, name);
  }
}, 300_000);

it('a page begins at its top, wherever the one before was read to', async () => {
  const phone = await phoneOf('pilot');
  const { page } = phone;
  const read = () => page.evaluate(() => document.querySelector('.reading')!.scrollTop + window.scrollY);
  for (const size of [
    { width: 320, height: 568 },
    { width: 640, height: 360 },
  ]) {
    await page.setViewportSize(size);
    await open(phone, '/F06/1', 'Go back if');
    await page.getByRole('link', { name: 'Show as a code square' }).scrollIntoViewIfNeeded();
    expect(await read()).toBeGreaterThan(0);
    await page.evaluate(() => (window.location.hash = '#/F06/2'));
    await page.getByRole('link', { name: 'Leg before' }).waitFor();
    await expect.poll(read).toBe(0);
  }
}, 120_000);

/** Every drum of the flight is read in its place, and the totals are asked for. */
const readEveryDrum = async ({ page }: Phone): Promise<void> => {
  const unread = page.getByRole('button', { name: /R\d[LR]/, pressed: false });
  while ((await unread.count()) > 0) await unread.first().click();
  await page.getByRole('button', { name: /Positions right/ }).click();
};

it('with the page’s keys or the phone’s own open, what is typed and what comes next can be reached', async () => {
  const report = { place: 'XGAN', state: 'dry', at: '2027-06-14T05:58Z', by: 'strip helper' };
  const client = await office.api('dispatcher');
  expect((await client.put(`/api/surface-reports/${randomUUID()}`, report)).status).toBe(200);
  const phone = await phoneOf('pilot');
  const { page } = phone;
  await page.getByRole('link', { name: /F06/ }).click();
  await page.getByRole('link', { name: 'Loaded' }).click();
  await page.getByRole('heading', { name: 'Read it, then tap it' }).waitFor();
  await expectFits(page, 'positions');
  await shots(phone, 'positions');
  await page.getByRole('button', { name: 'Another drum' }).click();
  await page.getByRole('button', { name: spoken('0572') }).click();
  await typeOn(phone, '0913');
  await expectFits(page, 'which drum');
  await shots(phone, 'which');
  await page.getByRole('button', { name: 'This drum' }).click();
  await page.getByRole('button', { name: 'Keep 0913' }).click();
  await typeOn(phone, '190');
  await page.getByText('The drum taken at 20.0 kg').waitFor();
  await expectFits(page, 'what it weighs');
  await page.getByRole('button', { name: 'Clear' }).click();
  await typeOn(phone, '200');
  await page.getByText(/200 kg would be 225 L of fuel/).waitFor();
  await expectFits(page, 'what it weighs, and a question');
  await shots(phone, 'weighs');
  // Nothing of it is kept before Keep.
  await page.reload();
  await page.getByRole('heading', { name: 'Read it, then tap it' }).waitFor();
  await readEveryDrum(phone);
  // Every key is in view before the first is pressed, and what they write into.
  await page.setViewportSize({ width: 320, height: 568 });
  await page.reload();
  await page.getByRole('heading', { name: 'Type your two totals' }).waitFor();
  await expectInView(page, ['Clear', /^0$/, /By hand/, /By the aircraft/]);
  await page.setViewportSize({ width: 360, height: 640 });
  await expectFits(page, 'two totals');
  await shots(phone, 'totals');
  // The figure of the sheet in kg, and a drum less: the slips have most to say.
  await typeOn(phone, '726');
  await page.getByRole('button', { name: /By the aircraft/ }).click();
  await typeOn(phone, '6950');
  await page.getByRole('button', { name: 'Compare' }).click();
  await page.getByText('Loaded waits.').waitFor();
  await expectFits(page, 'compare');
  await shots(phone, 'compare');
  await page.getByRole('button', { name: 'How they add' }).click();
  await expectFits(page, 'how they add');
  await shots(phone, 'adding');
  await page.getByRole('button', { name: 'Back to compare' }).click();
  await page.getByRole('button', { name: 'Sign for it' }).click();
  await expectFits(page, 'sign for it');
  await shots(phone, 'sign');
  await page.setViewportSize(aboveKeys);
  await page.getByLabel('Second person, full name').fill('S. Keeper');
  await expectNothingLost(page, 'sign for it, above the keys');
  await page.getByLabel('Second person, full name').focus();
  await shot(phone, 'phone-sign-keys');
}, 300_000);

it('drums on hold are told on the leg card and in the cabin, on the smallest phone too', async () => {
  const manager = await office.api('operations manager');
  for (const drum of ['0574', '0447']) {
    const hold = {
      kind: 'held',
      of: { drum },
      reason: 'seal doubtful, found at the morning walk',
      happenedAt: '2027-06-14T05:58Z',
      writtenAt: '2027-06-14T05:58Z',
      means: 'screen',
    };
    expect((await manager.put(`/api/movements/${randomUUID()}`, hold)).status).toBe(200);
  }
  const { pilot: crew } = (await (await office.api('dispatcher')).get<{ pilot: string }>('/api/flights/F05'))
    .body;
  const name = await crewMember('holder', crew);
  for (const [who, flight, drum] of [
    ['pilot', 'F06', '0574'],
    [name, 'F05', '0447'],
  ] as const) {
    const phone = await phoneOf(who);
    await open(phone, `/${flight}/1`, `Do not carry out ${drum}.`);
    await expectFits(phone.page, `${flight} on hold`);
    await shots(phone, `hold-${flight}`);
    await open(phone, `/${flight}/loaded`, `${drum} may not go out`);
    await expectFits(phone.page, `${flight} positions on hold`);
    await shots(phone, `hold-positions-${flight}`);
    // However many are read, nobody gets past it: another in its place, or without it.
    const { page } = phone;
    const unread = page.getByRole('button', { name: /R\d[LR] drum/, pressed: false });
    while ((await unread.count()) > 0) await unread.first().click();
    await page.getByRole('button', { name: /Positions right/ }).click({ force: true });
    await page.getByText(`On hold: ${drum}. Take it off first`).waitFor();
    await page.getByRole('button', { name: `Another in` }).click();
    await page.getByRole('button', { name: 'This drum' }).waitFor();
    await page.reload();
    await page.getByRole('button', { name: `Leave ${drum} behind` }).click();
    await page.getByText('Not as planned.').waitFor();
    expect(await page.getByText(/may not go out/).count()).toBe(0);
    await page.getByRole('button', { name: /Positions right/ }).click();
    await page.getByRole('heading', { name: 'Type your two totals' }).waitFor();
  }
}, 300_000);
