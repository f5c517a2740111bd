import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

const openBooked = async (
  id: string,
  role: 'dispatcher' | 'fuel quality' = 'dispatcher',
  at = { width: 1440, height: 900 },
): Promise<Page> => {
  const page = await office.signIn(role, at);
  await page.goto(`/load/${id}`);
  await page.getByText(/^Booked, no drum on it yet/).waitFor();
  return page;
};
const shot = async (page: Page, name: string) => {
  if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/${name}.png` });
};

describe('the load of a flight that flies anyway', () => {
  it('is drawn by leg with its limits, beside the drums that it could take', async () => {
    const page = await openBooked('X3');
    const leg = page.locator('table.load-leg').first();
    await leg.getByRole('rowheader', { name: /3 drums planned, freight$/ }).waitFor();
    await leg.getByRole('row', { name: /^XHAS landing, dry.*6,900 lb.*306 lb spare/ }).waitFor();
    await leg.getByRole('row', { name: /^XHAS landing, soft.*6,500 lb.*94 lb over/ }).waitFor();
    await leg
      .getByRole('row', { name: /^Binds: XHAS strip landing limit, 306 lb spare dry, 94 lb over soft/ })
      .waitFor();
    await page.getByText('A 4th drum takes 92 lb more under XHAS strip landing limit').waitFor();
    const takes = page.getByRole('table', { name: 'What each leg takes' });
    await takes.getByRole('row', { name: /XMER-XHAS none 310 kg 3 XHAS strip landing limit$/ }).waitFor();
    await takes.getByRole('row', { name: /XHAS-XMER none 0 kg 5 drum positions$/ }).waitFor();
    await expectAccessible(page);
    await shot(page, 'booked-x3');
  });

  it('shows passengers and freight as booked, and that no drum goes beside them', async () => {
    const page = await openBooked('X1');
    await page.getByText('Booked, no drum on it yet: the bars show what is booked on it.').waitFor();
    await page.getByText('Passengers and freight are as booked, not as weighed.').waitFor();
    await page
      .getByText('XMER-XISK: balance not checked: the seats of the passengers are not given.')
      .waitFor();
    await page.getByRole('img', { name: /4 passengers 792 lb, freight 265 lb/ }).waitFor();
    await page.getByText('XMER-XISK: 4 passengers and 1 drum are refused').waitFor();
    await page.getByRole('link', { name: 'X3 XMER-XHAS, 3 drums' }).click();
    await page.getByRole('heading', { name: 'X3, load' }).waitFor();
    await page.getByRole('row', { name: /^Binds: XHAS strip landing limit, 306 lb spare dry/ }).waitFor();
  });

  it('to whoever may only look says what it could take and how many drums stand free', async () => {
    const page = await openBooked('X3', 'fuel quality');
    await page.getByText('24 fit drums stand free at XMER: 0523, 0524, 0525 go').waitFor();
    expect(await page.getByRole('button', { name: /^Add / }).count()).toBe(0);
    await expectAccessible(page);
  });

  it('has all of it within a small screen', async () => {
    const page = await openBooked('X3', 'dispatcher', { width: 400, height: 800 });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(400);
    await expectAccessible(page);
    await shot(page, 'booked-x3-400');
  });
});

describe('drums added to it', () => {
  it('ask the server of an approval when typing rests or at Enter, not at each letter', async () => {
    const page = await openBooked('X1');
    await page.getByLabel('How many').fill('2');
    await page.getByText('2 drums do not go on it as booked, and none is drawn').waitFor();
    const asked: (string | null)[] = [];
    page.on('request', (request) => {
      const url = new URL(request.url());
      if (url.pathname === '/api/booked-flights/X1/load') asked.push(url.searchParams.get('approval'));
    });
    const approval = page.getByLabel('Approval of the authority, if one is cited');
    await approval.pressSequentially('CAA-99/1');
    // What is typed is not looked at yet: nothing is added by it.
    expect(await page.getByRole('button', { name: 'Add 2 drums' }).getAttribute('aria-disabled')).toBe(
      'true',
    );
    await page.waitForResponse((response) => response.url().includes('approval=CAA-99'));
    await approval.pressSequentially('2');
    await approval.press('Enter');
    await page.waitForResponse((response) => response.url().includes('approval=CAA-99%2F12'));
    expect(asked).toEqual(['CAA-99/1', 'CAA-99/12']);
    await shot(page, 'booked-x1-approval');
  });

  it('say before the press which go, what the cache gains and what they cost; too many are refused with pounds', async () => {
    const page = await openBooked('X3');
    await page
      .getByText('24 fit drums stand free at XMER: 0523, 0524, 0525 go, the oldest first; 21 stay free.')
      .waitFor();
    await page.getByText('XHAS is lowest at 1,090 L with them, 800 L without; minimum 600 L.').waitFor();
    await page.getByText('fuel 1,470 cr, handling 27 cr, flight nothing, as it flies anyway.').waitFor();
    const drums = page.getByLabel('How many');
    await drums.fill('4');
    await page.getByText('of 4 drums only 3 can go').waitFor();
    await page.getByText(/^XHAS accepts 6,900 lb landing; this load lands at 6,99\d lb/).waitFor();
    const add = (count: string) => page.getByRole('button', { name: `Add ${count}` });
    expect(await add('4 drums').getAttribute('aria-disabled')).toBe('true');
    await expectAccessible(page);
    await shot(page, 'booked-x3-refused');
    await drums.fill('2');
    await page.getByText('0523, 0524 go, the oldest first; 22 stay free.').waitFor();
    await page.locator('table.load-leg').first().getByText('2 drums planned, freight').waitFor();
    await add('2 drums').click();
    // Now it is a flight with drums by number, and the load has its sheet.
    await page.getByRole('link', { name: 'Print load sheet' }).waitFor();
    await page.getByText('0523', { exact: true }).first().waitFor();
  });
});
