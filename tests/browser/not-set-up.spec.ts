import { describe, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { administratorOf } from './testing/first-sign-in.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true, demo: 'no' });
const signIn = administratorOf({ said: () => office.said() });

it('Re-plan says the same, and leads to the same step', async () => {
  const page = await office.stranger();
  await signIn(page);
  await page.goto('/week');
  await page.getByRole('button', { name: 'Re-plan from now' }).click();
  const dialog = page.getByRole('dialog', { name: 'Re-plan' });
  const note = dialog.getByRole('status').filter({ hasText: 'Not set up yet.' });
  await note.waitFor();
  await expectAccessible(page);
  await note.getByRole('link', { name: 'Open Set-up' }).click();
  await page.getByRole('heading', { level: 1, name: 'Set-up' }).waitFor();
  expect(await dialog.isVisible()).toBe(false);
});

describe.each(['/morning', '/week', '/caches', '/drums', '/map'])('an empty database: %s', (path) => {
  it('says that nothing is set up yet, why, and leads to the step that does it', async () => {
    const page = await office.stranger();
    await signIn(page);
    await page.goto(path);
    const note = page.locator('#page').getByRole('status').filter({ hasText: 'Not set up yet.' }).first();
    await note.waitFor();
    for (const width of [1440, 400]) {
      await page.setViewportSize({ width, height: 800 });
      await expectAccessible(page);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    }
    await note.getByRole('link', { name: /^(Open )?Set-up/ }).click();
    await page.getByRole('heading', { level: 1, name: 'Set-up' }).waitFor();
  });
});

it('what leads nowhere yet is off, and says why beside it', async () => {
  const page = await office.stranger();
  await signIn(page);
  const isOff = async (name: string, why: string) => {
    const button = page.getByRole('button', { name, exact: true });
    await page.locator('.button-and-reason').filter({ has: button, hasText: why }).waitFor();
    expect(await button.getAttribute('aria-disabled')).toBe('true');
  };
  for (const path of ['/morning', '/week']) {
    await page.goto(path);
    await isOff('Print day pack', 'Set-up has no title, days and time zone yet.');
    expect(await page.getByRole('link', { name: 'Print day pack' }).count()).toBe(0);
  }
  await page.goto('/drums');
  await isOff('Count', 'Set-up has no places yet.');
  await isOff('Hold a batch', 'Set-up has no batches yet.');
  await page.keyboard.press('h');
  await page.keyboard.press('c');
  expect(await page.getByText(/No such batch|Choose the place/).count()).toBe(0);
  await page.keyboard.press('r');
  const radio = page.getByRole('dialog', { name: 'Radio report' });
  await radio.getByRole('textbox').first().fill('LOR soft 0652 helper');
  await isOff('Keep the report', 'Set-up has no places yet.');
  expect(await radio.getByText(/is no strip/).count()).toBe(0);
  await expectAccessible(page);
});
