import { it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

it('a strip that closes: the booked flight there is named before Enter, asked whether it lasts, and marked on Week and Morning', async () => {
  const page = await office.signIn('dispatcher');
  await page.keyboard.press('r');
  const dialog = page.getByRole('dialog', { name: 'Radio report' });
  await dialog.waitFor();
  await page.keyboard.type('CIN closed 0559 survey camp');
  await dialog.getByText(/Does it last\? Not counted as closed: X2 on Tue 15/).waitFor();
  await dialog.getByRole('button', { name: 'until Tue 15' }).click();
  await dialog.getByText('XCIN closed, 05:59, survey camp, by radio, to the end of Tue 15').waitFor();
  await dialog.getByText(/needs a decision, 2 passengers\. XCIN is reported closed/).waitFor();
  await expectAccessible(page);
  await page.keyboard.press('Enter');
  await dialog.getByText(/^Kept: XCIN closed/).waitFor();
  await page.keyboard.press('Escape');
  await page.keyboard.press('Alt+1');
  await page
    .getByRole('button', { name: /^X2, C1 XALD-XCIN-XMER, Tue 15 Needs a decision Booked/ })
    .waitFor();
  await page.keyboard.press('Alt+2');
  const box = page.getByRole('button', { name: /Needs a decision X2/ });
  await box.click();
  await page.getByText(/X2, Tue 15 Jun, XCIN: XCIN is reported closed\..* Tell whoever booked it/).waitFor();
  await page.getByText(/As booked it cannot fly: no drums\./).waitFor();
  await expectAccessible(page);
});
