import { expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

it('r on any page: one line, what it touches before Enter, and it is kept', async () => {
  const page = await office.signIn('dispatcher');
  await page.keyboard.press('Alt+3');
  await page.getByRole('heading', { level: 1, name: 'Caches' }).waitFor();
  await page.keyboard.press('r');
  const dialog = page.getByRole('dialog', { name: 'Radio report' });
  await dialog.waitFor();
  await page.keyboard.type('LOR wet');
  await dialog.getByText('"wet" is no surface. It is dry, damp, soft or closed.').first().waitFor();
  await page.keyboard.press('Control+A');
  await page.keyboard.type('LOR soft 0550 helper until Wed');
  await dialog.getByText('XLOR soft, 05:50, strip helper, by radio, to the end of Wed 16').waitFor();
  await dialog.getByText(/Counts today: dry now, soft with it/).waitFor();
  await dialog.getByText('No flight is touched.').waitFor();
  await expectAccessible(page);
  await page.keyboard.press('Enter');
  await dialog.getByText(/^Kept: XLOR soft/).waitFor();
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'detached' });

  const dispatcher = await office.api('dispatcher');
  const { body } = await dispatcher.get<{ items: { data: object }[] }>('/api/surface-reports');
  expect(body.items[0]!.data).toEqual({
    place: 'XLOR',
    state: 'soft',
    at: '2027-06-14T05:50Z',
    by: 'strip helper, by radio',
    untilDate: '2027-06-16',
  });
});

it('two strips in one line are two reports; who said it is asked for where the line does not say', async () => {
  const page = await office.signIn('dispatcher');
  await page.keyboard.press('r');
  await page.keyboard.type('ESK dry 0548 helper, FAL damp 0549');
  const dialog = page.getByRole('dialog', { name: 'Radio report' });
  const who = dialog.getByLabel('Who said it?');
  await who.waitFor();
  await dialog.getByText('Say who said it.').waitFor();
  // Enter leads to the question, and does not keep a report that nobody gave.
  await page.keyboard.press('Enter');
  await page.keyboard.type('J. Holm');
  await dialog.getByText('XFAL damp, 05:49, J. Holm, by radio').waitFor();
  await expectAccessible(page);
  await page.keyboard.press('Enter');
  await dialog.getByText(/Kept: XFAL damp, 05:49, J. Holm/).waitFor();
  await dialog.getByText(/Kept: XESK dry, 05:48, strip helper/).waitFor();
  expect(await who.count()).toBe(0);
});

it('a report that a later one outranks says so before Enter, and is kept beside it', async () => {
  const page = await office.signIn('dispatcher');
  await page.keyboard.press('r');
  const dialog = page.getByRole('dialog', { name: 'Radio report' });
  await page.keyboard.type('GAN dry 0552 J. Holm');
  await dialog.getByText(/Counts today/).waitFor();
  await page.keyboard.press('Enter');
  await dialog.getByText(/Kept: XGAN dry/).waitFor();
  await page.keyboard.type('GAN soft 0540 helper');
  await dialog
    .getByText(
      'XGAN: dry 05:52, J. Holm, by radio; your report of 05:40 will be kept, but the later one stands.',
    )
    .waitFor();
  await expectAccessible(page);
  await page.keyboard.press('Enter');
  await dialog.getByText(/Kept: XGAN soft, 05:40, .*; what counts is dry of 05:52/).waitFor();
});
