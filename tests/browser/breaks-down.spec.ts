import { it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

it('an aircraft that breaks down is taken out by engineering, whatever is planned by hand or booked on it', async () => {
  const page = await office.signIn('engineering', { width: 1440, height: 900 });
  await page.goto('/set-up/aircraft/A1');
  await page.getByRole('button', { name: 'Add a line' }).click();
  const away = { 'First day': '2027-06-14', 'Last day': '2027-06-16', Why: 'starter generator' };
  for (const [label, words] of Object.entries(away)) await page.getByLabel(label).last().fill(words);
  const touched = page.getByRole('table', { name: 'Flights it touches' });
  await touched.getByRole('row', { name: /^X1 .*booked.*A1 is away: starter generator\./ }).waitFor();
  await expectAccessible(page);
  if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/breaks-down.png` });
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByText('Saved: tail. It touches X1.').waitFor();
  if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/broken-down.png` });
  const week = await office.signIn('dispatcher', { width: 1440, height: 900 });
  await week.goto('/week');
  await week.locator('.week-board').getByText('starter generator').first().waitFor();
  if (process.env.SHOTS) await week.screenshot({ path: `${process.env.SHOTS}/week-out.png` });
});
