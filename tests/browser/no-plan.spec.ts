import { expect, it } from 'vitest';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

it('before any plan the morning names the caches that fall below critical, and leads to planning', async () => {
  const page = await office.signIn('dispatcher');
  const decide = page.getByRole('region', { name: 'Decide now', exact: true });
  await decide.getByText('No plan stands').waitFor();
  await decide.getByText(/^Below critical without flights: .*X[A-Z]{3} /).waitFor();
  await decide.getByRole('button', { name: 'Plan the week' }).click();
  const options = page.getByRole('dialog', { name: /^Plan the week from now/ });
  await options.getByRole('button', { name: 'Leave it' }).click();
  await page.waitForURL(/\/week$/);
  await page.getByRole('grid').waitFor();
  await page.getByRole('button', { name: 'Plan the week' }).waitFor();
  expect(await page.getByRole('button', { name: 'Re-plan from now' }).count()).toBe(0);
});
