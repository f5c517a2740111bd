import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice();

const open = async (page: Page, path: string): Promise<void> => {
  await page.goto(path);
  await page.getByRole('heading', { level: 1, name: 'Set-up' }).waitFor();
  await page
    .getByText(/^(Opening|Checking)\.\.\.$/)
    .first()
    .waitFor({ state: 'detached' });
};

it('every page of Set-up can be read and reached without a mouse, in light and dim', async () => {
  const page = await office.signIn('operations manager', { width: 1024, height: 768 });
  await open(page, '/set-up');
  const links = page.getByRole('navigation', { name: 'Set-up' }).getByRole('link');
  const paths = await links.evaluateAll((all) => all.map((link) => link.getAttribute('href')!));
  expect(paths.length).toBeGreaterThan(20);
  for (const path of paths) {
    await open(page, path);
    for (const ground of ['light', 'dim']) {
      await page.evaluate((value) => {
        document.documentElement.dataset.ground = value;
      }, ground);
      await expectAccessible(page);
    }
  }
}, 180_000);

it('a wrong address says that Set-up has no such page, not that a thing is missing', async () => {
  const page = await office.signIn('operations manager');
  await page.goto('/set-up/territory');
  await page.getByText('Set-up has no page "territory".').waitFor();
});

it('a remark of a base can be read whole in its field', async () => {
  const page = await office.signIn('operations manager', { width: 1440, height: 900 });
  await open(page, '/set-up/bases/XMER');
  const remark = page.getByLabel('Anything else');
  expect(await remark.inputValue()).not.toBe('');
  expect(await remark.evaluate((field) => field.scrollWidth - field.clientWidth)).toBe(0);
});

it('what has the focus in a long form never lies under its acts', async () => {
  const page = await office.signIn('operations manager', { width: 1024, height: 768 });
  await open(page, '/set-up/aircraft-types/A');
  const acts = page.locator('form .set-up-acts');
  await page.getByLabel('Maximum take-off weight').focus();
  const under: string[] = [];
  for (let press = 0; press < 40; press += 1) {
    await page.keyboard.press('Tab');
    const top = (await acts.boundingBox())!.y;
    const at = await page.evaluate(() => {
      const { bottom } = document.activeElement!.getBoundingClientRect();
      return { bottom, words: document.activeElement!.outerHTML.slice(0, 80) };
    });
    if (at.bottom > top + 1) under.push(at.words);
  }
  expect(under).toEqual([]);
});

it('the totals of the programmes stand in from the edge, under their list', async () => {
  const page = await office.signIn('operations manager');
  await open(page, '/set-up/programmes');
  const left = async (caption: string) => (await page.getByRole('table', { name: caption }).boundingBox())!.x;
  expect(await left('Planned by the helicopter tasks; flown by the litres drawn')).toBe(
    await left('Customers, recharge'),
  );
  await page.getByText('delivered cost, margin on it 8 %').waitFor();
});

describe('by keyboard', () => {
  it('a new thing asks its first field; refused, the first field that is wrong; left by Esc, the list has the focus back', async () => {
    const page = await office.signIn('operations manager');
    await open(page, '/set-up/helicopter-tasks');
    const begin = page.getByRole('button', { name: 'New helicopter task' });
    const form = page.getByRole('form', { name: 'New helicopter task' });
    await begin.press('Enter');
    await focusOn(form.getByLabel('Day'));
    await form.getByLabel('Day').fill('2027-06-18');
    await page.keyboard.press('Enter');
    await focusOn(form.getByRole('combobox', { name: 'Helicopter' }));
    await page.keyboard.press('Escape');
    await form.waitFor({ state: 'detached' });
    await focusOn(begin);
  });

  it('a line is opened by Enter, and left by its button as well as by Esc', async () => {
    const page = await office.signIn('operations manager');
    await open(page, '/set-up/places');
    const line = page.getByRole('button', { name: 'XLOR' });
    await line.press('Enter');
    const form = page.getByRole('form', { name: 'Places: XLOR' });
    await focusOn(form.getByLabel('Code'));
    await form.getByRole('button', { name: 'Leave it', exact: true }).press('Enter');
    await focusOn(line);
  });

  it('a place without a code is told so at its field, with everything else that is missing', async () => {
    const page = await office.signIn('operations manager');
    await open(page, '/set-up/places/new');
    const form = page.getByRole('form', { name: 'New place' });
    await form.getByRole('button', { name: 'Save' }).press('Enter');
    await focusOn(form.getByLabel('Code'));
    await expect.poll(() => form.getByText(/^Fault: /).count()).toBeGreaterThan(3);
  });

  it('a person is left by Esc, nothing kept', async () => {
    const page = await office.signIn('operations manager');
    await open(page, '/set-up/people');
    const begin = page.getByRole('button', { name: 'New person' });
    await begin.press('Enter');
    await focusOn(page.getByLabel('Sign-in name'));
    await page.keyboard.type('n.vale');
    await page.keyboard.press('Escape');
    await focusOn(begin);
    expect(await page.getByText('n.vale').count()).toBe(0);
  });
});

const focusOn = (field: Locator): Promise<void> =>
  expect.poll(() => field.evaluate((each) => each === document.activeElement)).toBe(true);
