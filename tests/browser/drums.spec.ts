import { randomUUID } from 'node:crypto';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { expectInSight } from './testing/expect-in-sight.js';
import { openOffice, signInAt } from './testing/open-office.js';

const office = openOffice({ own: true });

const openDrums = async (page: Page): Promise<void> => {
  await page.keyboard.press('Alt+4');
  await page.getByRole('heading', { level: 1, name: 'Drums' }).waitFor();
};

const find = async (page: Page, digits: string): Promise<void> => {
  await page.keyboard.press('/');
  await page.keyboard.type(digits);
  await page.getByText('1 drum. Enter opens it.').waitFor();
  await page.keyboard.press('Enter');
};

/** A plan in force, and one of its flights approved that has drums of J27-041 set aside. */
const approveAFlightWithTheBatch = async (): Promise<string> => {
  const manager = await office.api('operations manager');
  const id = randomUUID();
  await manager.put(`/api/plans/${id}`, { seconds: 5, seed: 3 });
  await expect
    .poll(async () => (await manager.get<{ state: string }>(`/api/plans/${id}`)).body.state, {
      timeout: 60_000,
    })
    .toBe('solved');
  await manager.post(`/api/plans/${id}/accept`, {});
  const { flights } = (
    await manager.get<{ flights: { flight: string }[] }>('/api/holds/consequence?batch=J27-041')
  ).body;
  const [{ flight }] = flights as [{ flight: string }];
  const { revision } = (await manager.get<{ revision: number }>(`/api/flights/${flight}`)).body;
  const headers = { 'If-Match': `"${revision}"` };
  expect((await manager.post(`/api/flights/${flight}/approve`, {}, { headers })).status).toBe(200);
  return flight;
};

/** Fuel quality has one person in the demo, and two are needed. */
const row = (page: Page, place: string) =>
  page.getByRole('table', { name: 'Usable by place with the hold' }).getByRole('row', { name: place });
const cellsOf = (page: Page, place: string) => row(page, place).getByRole('cell').allInnerTexts();

describe('a drum', () => {
  it('is found by its last digits, and is three facts and sentences with their source', async () => {
    const page = await office.signIn('storekeeper');
    await openDrums(page);
    await find(page, '0514');
    const drum = page.getByRole('article', { name: 'Drum 0514' });
    await drum
      .getByText('Into the book at XLOR: filled sealed, batch J27-041, 200 L, 180.5 kg gross')
      .waitFor();
    await drum.getByText('opening of the ledger, at the screen, entered').waitFor();
    const facts = await drum.locator('dd').allInnerTexts();
    expect(facts).toEqual(['XLOR', 'filled sealed, 200 L', 'fit retest due Wed 19 April 2028']);
    await expectAccessible(page);
  });

  it('nothing ends in these digits: it is said, with what to do', async () => {
    const page = await office.signIn('storekeeper');
    await openDrums(page);
    await page.keyboard.press('/');
    await page.keyboard.type('9999');
    await page.getByText('A number that cannot be read gets a provisional one').waitFor();
  });

  it('the next number is typed over the last one, and Enter may be quicker than the list', async () => {
    const page = await office.signIn('storekeeper');
    await openDrums(page);
    await find(page, '0583');
    await page.getByRole('article', { name: 'Drum 0583' }).waitFor();
    await page.keyboard.press('/');
    await page.keyboard.type('0514');
    await page.keyboard.press('Enter');
    await page.getByRole('article', { name: 'Drum 0514' }).waitFor();
    expect(await page.getByLabel('Last digits of the number').inputValue()).toBe('0514');
    await page.keyboard.press('Escape');
    expect(await page.getByLabel('Last digits of the number').inputValue()).toBe('');
  });

  it('is filled: the difference from what it should weigh is shown while it is typed', async () => {
    const page = await office.signIn('storekeeper');
    await openDrums(page);
    await page.keyboard.press('f');
    const form = page.getByRole('form', { name: 'Fill a drum' });
    await form.getByLabel('Number on the drum').fill('0901');
    await form.getByLabel('Batch').selectOption('J27-041');
    await form.getByLabel('Filled').fill('200');
    await form.getByLabel('Temperature of the fuel').fill('15');
    await form.getByLabel('Tare').fill('19.7');
    await form.getByLabel('Gross, by the scale').fill('190.5');
    // 200 L x 0.804 kg/L + 19.7 kg tare = 180.5 kg.
    await form.getByText('10.0 kg heavier than expected').waitFor();
    await form
      .getByText(
        /^Suspect: .*over the 1 % of demo fuel manual, drums, revision 1, outside 0.775 to 0.840 kg\/L of jet fuel/,
      )
      .waitFor();
    await form.getByLabel('Gross, by the scale').fill('180.5');
    await form.getByText('as expected, 0.0 kg').waitFor();
    await expectAccessible(page);
    await form.getByRole('button', { name: 'Enter the drum as filled' }).click();
    await form.getByText('In the ledger').waitFor();
    await page.keyboard.press('Escape');
    await find(page, '0901');
    await page
      .getByText('Filled at XALD, batch J27-041, 200 L, 160.8 kg net, 180.5 kg gross, tare 19.7 kg.')
      .waitFor();
  });

  it('that was entered wrongly is corrected by another entry, and both show', async () => {
    const page = await office.signIn('storekeeper');
    await openDrums(page);
    await find(page, '0901');
    await page.getByRole('button', { name: /^Correct this entry: Filled at XALD/ }).click();
    const form = page.getByRole('form', { name: 'Correct an entry' });
    await form.getByLabel('What was wrong').fill('it was drum 0910');
    await form.getByRole('button', { name: 'Reverse this entry' }).click();
    await page.getByText('Reversed by a later entry: it was drum 0910.').waitFor();
    await page.getByText('Filled at XALD, batch J27-041').first().waitFor();
  });

  it('that nobody had heard of is raised, and marked as seen with words', async () => {
    const pilot = await office.api('pilot');
    const now = '2027-06-14T05:58Z';
    const entry = {
      kind: 'opened',
      drum: '7777',
      place: 'XLOR',
      happenedAt: now,
      writtenAt: now,
      means: 'phone',
    };
    expect((await pilot.put(`/api/movements/${randomUUID()}`, entry)).status).toBe(200);
    const page = await office.signIn('storekeeper');
    await openDrums(page);
    await page.getByRole('button', { name: /^Raised/ }).click();
    const thing = page.getByRole('article').filter({ hasText: '7777' }).first();
    await thing.getByRole('button', { name: 'Mark as seen' }).click();
    await thing.getByLabel('What it was').fill('Misread: it was 0517.');
    await thing.getByRole('button', { name: 'Mark as seen' }).click();
    await thing.waitFor({ state: 'detached' });
    await page.getByLabel('Those that were seen, too').check();
    await page.getByText('Misread: it was 0517.').waitFor();
  });

  it('has a tag to print, with its number and what it is', async () => {
    const page = await office.signIn('storekeeper');
    await page.goto('/drums/0514');
    await page.getByRole('article', { name: 'Drum 0514' }).waitFor();
    await page.getByText('Print tag').waitFor();
    await page.evaluate(() => {
      window.print = () => {};
    });
    await page.getByRole('button', { name: 'Print tag' }).click();
    await page.emulateMedia({ media: 'print' });
    const tag = page.getByRole('region', { name: 'Tag of drum 0514' });
    await tag.getByText('Jet A-1').waitFor();
    expect(await tag.textContent()).toMatch(
      /^0514FuelJet A-1BatchJ27-041FilledMon 19 April 2027Retest dueWed 19 April 2028/,
    );
    expect(await page.getByRole('heading', { level: 1 }).isVisible()).toBe(false);
  });
});

describe('lists', () => {
  it('a drum that is lost stands at no place, and is one of all', async () => {
    const lost = { kind: 'lost', drum: '0415', place: 'XBIR', means: 'radio', by: 'strip helper' };
    const at = { happenedAt: '2027-06-14T05:58Z', writtenAt: '2027-06-14T05:58Z' };
    const desk = await office.api('dispatcher');
    expect((await desk.put(`/api/movements/${randomUUID()}`, { ...lost, ...at })).status).toBe(200);
    const page = await office.signIn('storekeeper');
    await openDrums(page);
    const rows = page.getByRole('table', { name: 'All drums' }).locator('tbody tr');
    await rows.first().waitFor();
    await page.getByRole('button', { name: `All drums ${await rows.count()}` }).waitFor();
    await page.getByRole('button', { name: /^Aboard, or not known/ }).click();
    await page.getByRole('table', { name: 'Aboard, or not known' }).getByText('0415').waitFor();
  });

  it('retest coming: J26-118 is not burned by then, 12 drums at four caches', async () => {
    const page = await office.signIn('storekeeper');
    await openDrums(page);
    await page.getByRole('button', { name: /^Retest coming/ }).click();
    await page
      .getByText(
        'J26-118, due Tue 22 June 2027: 12 drums not burned by then, XBIR 6, XDUN 2, XHAS 1, XJUN 3.',
      )
      .waitFor();
    await expectAccessible(page);
  });

  it('the ledger is leafed through by place', async () => {
    const page = await office.signIn('storekeeper');
    await openDrums(page);
    await page.getByRole('button', { name: 'Ledger' }).click();
    await page.getByLabel('Place').selectOption('XMAR');
    await page
      .getByRole('cell', { name: /^Into the book at XMAR/ })
      .first()
      .waitFor();
    await expect.poll(() => page.getByRole('cell', { name: /^Into the book at/ }).count()).toBe(3);
    await expectAccessible(page);
  });
});

describe('a batch is chosen', () => {
  it('by its number and Enter, though the list has not come yet; a number that is none is told', async () => {
    const page = await office.signIn('dispatcher');
    let letGo = (): void => {};
    const late = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    await page.route('**/api/batches*', async (route) => {
      await late;
      await route.continue();
    });
    await openDrums(page);
    await page.keyboard.press('h');
    await page.keyboard.type('J27-041');
    await page.keyboard.press('Enter');
    await page.getByText('The list is not here yet: J27-041 is chosen when it comes.').first().waitFor();
    letGo();
    await page.getByText('44 drums, 8,800 L, in 7 places.').waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('form', { name: 'Set the hold' }).waitFor({ state: 'detached' });
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Drums');
    await page.keyboard.press('h');
    await page.keyboard.type('J99');
    await page.keyboard.press('Enter');
    await page.getByText('No such batch: J99. Nothing is chosen.').waitFor();
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await page.getByText('No drum is open.').waitFor();
  });
});

describe('a batch is recalled', () => {
  it('what follows is shown first; one press holds 44 drums; two people release them', {
    timeout: 240_000,
  }, async () => {
    await (await office.api('pilot')).onPhone();
    await (await office.api('helicopter crew')).onPhone();
    const flight = await approveAFlightWithTheBatch();

    // From the first key to the result.
    const page = await office.signIn('dispatcher');
    await openDrums(page);
    await page.keyboard.press('h');
    await page.getByRole('combobox', { name: 'Batch to hold' }).fill('J27-041');
    await page.getByRole('option', { name: /^J27-041/ }).waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.getByText('44 drums, 8,800 L, in 7 places.').waitFor();
    await page.getByText('With it 4 caches are below minimum, 2 of them below critical.').waitFor();
    await row(page, 'XLOR').getByText('2,200 L').first().waitFor();
    // Place, drums, book, usable now, usable then, minimum, then: the figures of product.md, moment of truth 4.
    expect(await cellsOf(page, 'XESK')).toEqual([
      '6 drums',
      '2,400 L',
      '2,400 L',
      '1,200 L',
      '1,200 L',
      'At minimum',
    ]);
    expect(await cellsOf(page, 'XLOR')).toEqual([
      '6 drums',
      '2,200 L',
      '2,200 L',
      '1,000 L',
      '1,200 L',
      'Below minimum',
    ]);
    expect((await cellsOf(page, 'XFAL')).slice(3)).toEqual(['800 L', '1,000 L', 'Below minimum']);
    expect((await cellsOf(page, 'XKNA')).slice(3)).toEqual(['120 L', '800 L', 'Below critical']);
    expect((await cellsOf(page, 'XMAR')).slice(3)).toEqual(['0 L', '400 L', 'Below critical']);
    const drumsAt = await Promise.all(
      ['XALD', 'XMER', 'XESK', 'XLOR', 'XKNA', 'XMAR', 'XFAL'].map(
        async (place) => (await cellsOf(page, place))[0],
      ),
    );
    expect(drumsAt).toEqual(['14', '10', '6', '6', '3', '3', '2'].map((count) => `${count} drums`));
    const toHear = page.getByRole('region', { name: 'Who has to hear of it' });
    await toHear.getByText('Demo pilot').waitFor();
    await toHear.getByText('Demo helicopter crew').waitFor();
    await page.getByRole('region', { name: 'Flights touched' }).getByText(flight, { exact: true }).waitFor();
    await page.getByLabel('Radio script for').selectOption('XLOR');
    await page
      .getByText('XLOR: Batch J27-041 is held. Do not use or load 6 drums: 0514, 0515')
      .first()
      .waitFor();
    await expectAccessible(page);
    expect(await page.getByRole('button', { name: 'Hold 44 drums' }).isEnabled()).toBe(false);
    await page.getByText('Write the reason: it goes to everybody.').waitFor();
    await page.getByLabel('Reason').fill("Supplier's notice of 14 June, water");
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: /^Batch J27-041 is held/ }).waitFor();
    // Of the 44, at the bases and at the caches.
    await page.getByText(/, 24 of them held$/).waitFor();
    await page.getByText(/, 20 of them held$/).waitFor();
    await page.getByRole('button', { name: 'XALD has been called' }).waitFor();
    await expectInSight(page.getByRole('region', { name: 'Radio script' }));

    // The result: who has not heard, the flight that needs a decision, the book as before, drums that say HOLD.
    const notHeard = page.getByRole('region', { name: 'Who has not heard' });
    await notHeard.getByText('Demo pilot').waitFor();
    await notHeard.getByText('Demo helicopter crew').waitFor();
    const touched = page.getByRole('region', { name: 'Flights touched' }).getByRole('listitem');
    await touched.filter({ hasText: flight }).getByText('Needs a decision').waitFor();
    expect((await cellsOf(page, 'XLOR')).slice(0, 3)).toEqual(['6 drums', '2,200 L', '1,000 L']);
    await page.getByText('Two people of fuel quality release it.').waitFor();
    await expectAccessible(page);
    await page.getByRole('button', { name: /^Held/ }).getByText('44').waitFor();
    await find(page, '0514');
    const drum = page.getByRole('article', { name: 'Drum 0514' });
    await drum.getByText("Batch J27-041 held: Supplier's notice of 14 June, water.").waitFor();
    await drum.getByText('HOLD', { exact: true }).waitFor();

    // Released by two of fuel quality, each at their own sign-in.
    const first = await office.signIn('fuel quality');
    await openDrums(first);
    await first.getByRole('button', { name: /^Held/ }).click();
    await first.getByRole('button', { name: 'Open batch J27-041' }).click();
    // Held: the calls come before a release, which nobody is asked for unless they want it.
    await expectInSight(first.getByRole('region', { name: 'Radio script' }));
    expect(await first.getByLabel('What was found').count()).toBe(0);
    await first.getByRole('button', { name: 'Release batch J27-041' }).click();
    await first.getByLabel('What was found').fill('Samples clear, certificate L-2027-041');
    await first.getByRole('button', { name: 'Propose to release 44 drums' }).click();
    await first.getByText('Your name is the first. Somebody else of fuel quality has to agree.').waitFor();
    await drum.getByText('HOLD', { exact: true }).waitFor();
    const second = await office.stranger();
    await signInAt(second, 'fuel-quality-2');
    await openDrums(second);
    await second.getByRole('button', { name: /^Held/ }).click();
    await second.getByRole('button', { name: 'Open batch J27-041' }).click();
    await second.getByText('Found: Samples clear, certificate L-2027-041.').waitFor();
    await expectAccessible(second);
    await second.getByRole('button', { name: 'Agree: release 44 drums' }).click();
    const released = second.getByRole('region', { name: 'Released: batch J27-041' });
    await released
      .getByText(/^Released .*\d\d:\d\d by Demo fuel quality and Demo second fuel quality\.$/)
      .waitFor();
    await expectAccessible(second);
    await drum
      .getByText(
        'Batch J27-041 released: Samples clear, certificate L-2027-041. Second person: Demo second fuel quality.',
      )
      .waitFor();
    await drum.getByText(/^fit/).waitFor();
  });
});

describe('what is heard', () => {
  it('the number of a drum that could not be read is brought together with the real one', async () => {
    const page = await office.signIn('storekeeper');
    await openDrums(page);
    await find(page, '7777');
    await page.getByRole('button', { name: 'Bring together' }).click();
    const form = page.getByRole('form', { name: 'Bring two numbers together' });
    await form.getByLabel('The number it has').fill('0517');
    await form.getByText('0517: XLOR, filled sealed, 200 L').waitFor();
    await form.getByRole('button', { name: '7777 is drum 0517' }).click();
    await form.getByText('In the ledger').waitFor();
    await page.keyboard.press('Escape');
    await find(page, '0517');
    await page.getByText('also known as 7777').waitFor();
  });

  it('a count by radio is kept with who counted and when; the book is shown once it is typed', async () => {
    const page = await office.signIn('storekeeper');
    await openDrums(page);
    await page.keyboard.press('c');
    const form = page.getByRole('form', { name: 'Count a place' });
    await form.getByLabel('Place').selectOption('XLOR');
    expect(await form.getByText(/the book/).count()).toBe(0);
    await form.getByLabel('Fuel found').fill('2200');
    await form.getByLabel('Sealed').fill('10');
    await form.getByLabel('Open', { exact: true }).fill('1');
    await form.getByLabel('Empty').fill('0');
    await form.getByText('0 L from the book of 2,200 L, 44 L allowed: agrees.').waitFor();
    await form.getByLabel('How', { exact: true }).selectOption('drums seen');
    await form.getByLabel('How it came').selectOption('radio');
    await form.getByLabel('Counted by, if not you').fill('strip helper');
    await form.getByLabel('Time seen').fill('05:55');
    await form.getByRole('button', { name: 'Enter count' }).click();
    await page.getByText('XLOR: count of 2,200 L is in the ledger.').waitFor();
    await page.getByRole('button', { name: 'Ledger' }).click();
    const entry = page
      .getByRole('row')
      .filter({ hasText: 'XLOR counted by drums seen, from the ground: 2,200 L, 10 sealed' });
    await entry.getByText(/strip helper, by radio, written \d\d:\d\d, entered/).waitFor();
  });
});
