import type { Locator } from 'playwright-core';
import { expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

/** Places of the batch by the demo's moment of truth 4. */
const placesOfBatch = ['XALD', 'XESK', 'XFAL', 'XKNA', 'XLOR', 'XMAR', 'XMER'];

const placesToCall = async (region: Locator): Promise<readonly string[]> => {
  const words = region.getByText(
    /^Nobody in the field has a device that is signed in: tell everybody by radio/,
  );
  await words.waitFor();
  return ((await words.textContent()) ?? '').match(/\bX[A-Z]{3}\b/g)?.sort() ?? [];
};

const leftToCall = async (region: Locator): Promise<readonly string[]> => {
  const words = region.getByText(/^To call: /);
  await words.waitFor();
  return ((await words.textContent()) ?? '').match(/\bX[A-Z]{3}\b/g)?.sort() ?? [];
};

it('a hold that no device can hear says whom to call, and never that every device has asked', async () => {
  const page = await office.signIn('dispatcher');
  await page.goto('/drums?act=hold&batch=J27-041');
  await page.getByText('44 drums, 8,800 L, in 7 places.').waitFor();
  const before = page.getByRole('region', { name: 'Who has to hear of it' });
  expect(await placesToCall(before)).toEqual(placesOfBatch);

  await page.getByLabel('Reason').fill("Supplier's notice of 14 June, water");
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: /^Batch J27-041 is held/ }).waitFor();
  const after = page.getByRole('region', { name: 'Who has not heard' });
  await after.getByText(/tell everybody by radio/).waitFor();

  // The list of whom to call gets shorter with every call, here and wherever somebody else has it open.
  const script = page.getByRole('region', { name: 'Radio script' });
  expect(await leftToCall(script)).toEqual(placesOfBatch);
  await script.getByLabel('Radio script for').selectOption('XLOR');
  await script.getByRole('button', { name: 'XLOR has been called' }).click();
  await script.getByText('1 of 7 called').waitFor();
  expect(await leftToCall(script)).toEqual(placesOfBatch.filter((place) => place !== 'XLOR'));
  const other = await office.signIn('operations manager');
  await other.goto('/drums?act=hold&batch=J27-041');
  const there = other.getByRole('region', { name: 'Radio script' });
  await there.getByText('1 of 7 called').waitFor();
  await there.getByLabel('Radio script for').selectOption('XLOR');
  await there.getByText(/Called \d\d:\d\d, Demo dispatcher/).waitFor();
  await expectAccessible(other);

  const pilot = await office.api('pilot');
  await after.getByRole('button', { name: 'Look again' }).click();
  await after.getByText(/tell everybody by radio/).waitFor(); // An office browser is no phone in the field.
  await pilot.onPhone();
  await after.getByRole('button', { name: 'Look again' }).click();
  await after.getByText(/^Every device in the field has asked since/).waitFor();
});
