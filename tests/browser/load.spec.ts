import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { type LoadDesk, openLoadDesk } from './testing/load-desk.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });
let desk: LoadDesk;
beforeAll(async () => {
  desk = await openLoadDesk({
    manager: await office.api('operations manager'),
    dispatcher: await office.api('dispatcher'),
    dataDir: office.dataDir,
  });
}, 120_000);

const openLoad = async (id: string, role: 'dispatcher' = 'dispatcher'): Promise<Page> => {
  const page = await office.signIn(role);
  await page.goto(`/load/${id}`);
  await page.getByRole('heading', { name: `${id}, load` }).waitFor();
  await page.getByText('Assumed:').waitFor();
  return page;
};
const shot = async (page: Page, name: string) => {
  if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/${name}.png` });
};

describe('load of a flight', () => {
  it('is chosen from a list when the address names none', async () => {
    const page = await office.signIn('dispatcher');
    await page.keyboard.press('Alt+5');
    await page.getByRole('link', { name: 'F05', exact: true }).click();
    await page.getByRole('heading', { name: 'F05, load' }).waitFor();
  });

  it('says which limit binds, by how much, and what the strip would allow soft', async () => {
    const page = await openLoad('F05');
    await page
      .getByText('XLOR strip landing limit, 169 lb spare dry, 531 lb over soft. Drum positions 6 of 6.')
      .last()
      .waitFor();
    await page.getByRole('row', { name: /XLOR leave again full, soft.*7,550 lb.*581 lb over/ }).waitFor();
    await page.getByText('leave if soft').first().waitFor();
    await page.getByRole('button', { name: /Take 4: leave 0451, 0452/ }).waitFor();
    await expectAccessible(page);
    await shot(page, 'load-lor');
  });
});
