import { randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

it('a new person signs in with a one-time password and has to choose their own before anything else', async () => {
  const manager = await office.api('operations manager');
  const person = { name: 'n.vale', fullName: 'N. Vale', roles: ['dispatcher'] };
  const made = await manager.make<{ oneTimePassword: string }>(`/api/people/${randomUUID()}`, person);
  expect(made.body.oneTimePassword).toMatch(/\S{8,}/);

  const page = await office.stranger();
  await page.getByLabel('Name').fill('n.vale');
  await page.getByLabel('Password').fill(made.body.oneTimePassword);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Choose your password' }).waitFor();
  await expectAccessible(page);
  const overflow = () =>
    page.evaluate(() => document.documentElement.scrollHeight - document.documentElement.clientHeight);
  expect(await overflow()).toBe(0);
  // The rule stands at the field before anything is typed; too short is told there, by the page and no bubble.
  await page.getByText('At least 10 letters or figures.').waitFor();
  await page.getByLabel('One-time password').fill(made.body.oneTimePassword);
  await page.getByLabel('New password', { exact: true }).fill('short');
  await page.keyboard.press('Enter');
  await page.getByText('Fault: 10 letters or figures at least; these are 5.').waitFor();
  expect(await page.locator('input:invalid').count()).toBe(0);

  await page.goto('/week');
  await page.getByRole('heading', { name: 'Choose your password' }).waitFor();
  await page.getByLabel('One-time password').fill('not what was given');
  await page.getByLabel('New password', { exact: true }).fill('a long word of my own');
  await page.getByLabel('New password again').fill('a long word of my own');
  await page.keyboard.press('Enter');
  await page.getByText('Fault: this is not your password.').waitFor();

  await page.getByLabel('One-time password').fill(made.body.oneTimePassword);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Week' }).waitFor();
  await page.getByRole('button', { name: 'N. Vale, dispatcher' }).waitFor();
});
