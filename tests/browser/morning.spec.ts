import { randomUUID } from 'node:crypto';
import { beforeAll, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

interface Run {
  readonly state: string;
}

/** A plan made and accepted: flights to decide. */
beforeAll(async () => {
  const dispatcher = await office.api('operations manager');
  const path = `/api/plans/${randomUUID()}`;
  await dispatcher.put(path, { seconds: 4, seed: 3 });
  for (;;) {
    const { body } = await dispatcher.get<Run>(path);
    if (body.state === 'solved') break;
    if (!['queued', 'solving'].includes(body.state)) throw new Error(`the plan ended ${body.state}`);
    await new Promise((resolve) => setTimeout(resolve, 250));
  }
  expect((await dispatcher.post(`${path}/accept`, {})).status).toBe(200);
});

const column = (page: Awaited<ReturnType<typeof office.signIn>>, name: string) =>
  page.getByRole('region', { name, exact: true });

it('the first flight due holds the focus; arrows move, Enter opens it', async () => {
  const page = await office.signIn('dispatcher');
  const decide = column(page, 'Decide now');
  await decide.getByRole('button', { name: 'Open flight' }).waitFor();
  await expectAccessible(page);
  const flight = await page.evaluate(() => document.activeElement?.textContent);
  expect(flight).toMatch(/^F\d+, /);
  await page.keyboard.press('ArrowDown');
  expect(await page.evaluate(() => document.activeElement?.textContent)).not.toBe(flight);
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Enter');
  await page.waitForURL(new RegExp(`/week/${/^F\d+/.exec(flight!)![0]}`));
});

it('a strip that goes soft by radio is told at once: among what has changed, and in its column', async () => {
  const page = await office.signIn('dispatcher');
  await column(page, 'Strips').getByRole('columnheader', { name: /XLOR/ }).waitFor();
  await page.keyboard.press('r');
  await page.getByRole('dialog', { name: 'Radio report' }).waitFor();
  await page.keyboard.type('LOR soft 0555 helper until Wed');
  await page.getByText(/Counts today: dry now, soft with it/).waitFor();
  await page.keyboard.press('Enter');
  await page.getByText(/^Kept: XLOR soft/).waitFor();
  await page.keyboard.press('Escape');
  await column(page, 'Changed').getByText('XLOR soft, to the end of Wed 16').waitFor();
  await column(page, 'Strips').getByText('soft', { exact: true }).first().waitFor();
});

// product.md, T5: CIN dip 2,150 L against a book of 2,400 L is 250 L short, 48 L allowed.
it('a count that differs from the book is to be decided, with its figures', async () => {
  const page = await office.signIn('dispatcher');
  const storekeeper = await office.api('storekeeper');
  await storekeeper.put(`/api/movements/${randomUUID()}`, {
    kind: 'counted',
    place: 'XCIN',
    method: 'dip',
    seenFrom: 'ground',
    millilitres: 2_150_000,
    sealedDrums: 10,
    openDrums: 1,
    emptyDrums: 0,
    happenedAt: '2027-06-14T05:40Z',
    writtenAt: '2027-06-14T05:45Z',
    means: 'paper',
  });
  const decide = column(page, 'Decide now');
  await decide.getByText('250 L short, 48 L allowed').waitFor();
  await decide.getByText(/The plan uses 2,150 L\./).waitFor();
  await column(page, 'Changed').getByText('XCIN counted, 2,150 L').waitFor();
});

it('a handover is signed item by item, and only then taken over', async () => {
  const outgoing = await office.signIn('dispatcher');
  await column(outgoing, 'Decide now').getByRole('button', { name: /^Open/ }).waitFor();
  await outgoing.keyboard.press('h');
  const list = outgoing.getByRole('dialog', { name: 'Handover' });
  await list.getByLabel('What else the next person must hear').fill('Generator at XISK is being mended.');
  await expectAccessible(outgoing);
  await list.getByRole('button', { name: /^Hand over/ }).click();
  await list.getByText(/The incoming person signs each item/).waitFor();

  // The incoming person does not have to look for it: it stands above everything else.
  const incoming = await office.signIn('operations manager');
  const waiting = column(incoming, 'Handover that waits');
  await waiting.getByText('Generator at XISK is being mended.').waitFor();
  await waiting.getByText(/^Demo dispatcher hands over/).waitFor();
  await expectAccessible(incoming);
  await waiting.getByRole('button', { name: 'Read and sign' }).click();
  const theirs = incoming.getByRole('dialog', { name: 'Handover' });
  await theirs.getByText('Generator at XISK is being mended.').waitFor();
  await theirs.getByText(/items? not signed for yet/).waitFor();
  const sign = theirs.getByRole('button', { name: /^Sign item/ });
  for (let left = await sign.count(); left > 0; left--) {
    await sign.first().click();
    await expect.poll(() => sign.count(), { timeout: 10_000 }).toBe(left - 1);
  }
  await waiting.getByText(/are signed for; it is not taken over yet/).waitFor();
  await theirs.getByRole('button', { name: 'Take over' }).click();
  await theirs
    .getByRole('status')
    .getByText(/^Taken over .*\d\d:\d\d from Demo dispatcher, \d+ items signed\.$/)
    .waitFor();
  expect(await theirs.getByRole('button', { name: /^Hand over/ }).count()).toBe(0);
  await theirs.getByText(/Demo dispatcher to Demo operations manager/).waitFor();
  await waiting.waitFor({ state: 'detached' });
  // Told elsewhere too, without being touched.
  await column(outgoing, 'Handover that waits').waitFor({ state: 'detached' });
});

it('a dialog whose fields come late gives the focus to the first of them when it comes', async () => {
  const page = await office.signIn('dispatcher');
  await column(page, 'Strips').waitFor();
  let letGo = () => {};
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  await page.route('**/api/paper-entries?*', async (route) => {
    await held;
    await route.continue();
  });
  await page.keyboard.press('h');
  const dialog = page.getByRole('dialog', { name: 'Handover' });
  await dialog.getByText('Checking...').waitFor();
  letGo();
  await dialog.getByLabel('What else the next person must hear').waitFor();
  await page.keyboard.type('Said at once.');
  await dialog.getByText('said Said at once.').waitFor();
});

it('a medevac call: where fuel can be drawn now, the reserve told apart', async () => {
  const page = await office.signIn('dispatcher');
  await column(page, 'Strips').waitFor();
  await page.keyboard.press('m');
  const dialog = page.getByRole('dialog', { name: 'Medevac: fuel now' });
  await dialog.getByRole('row', { name: /XLOR 2,200 L/ }).waitFor();
  await expectAccessible(page);
});

it('on a phone the lists stand one below the other, and nothing is cut off', async () => {
  const page = await office.signIn('dispatcher', { width: 400, height: 800 });
  await column(page, 'Decide now').getByRole('button', { name: /^Open/ }).waitFor();
  await expectAccessible(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(400);
});

it('on paper the flights for a single window stand with the harm that they avoid, by which they are ordered', async () => {
  const page = await office.signIn('dispatcher', { width: 794, height: 1123 });
  await page.getByRole('table', { name: /^If only one window opens today/ }).waitFor();
  await page.emulateMedia({ media: 'print' });
  await page.getByRole('columnheader', { name: 'Harm avoided' }).waitFor({ timeout: 5_000 });
  await page
    .getByRole('cell', { name: /litre-days/ })
    .first()
    .waitFor({ timeout: 5_000 });
});

it('at 1024 a column that is long scrolls by itself, and the page does not scroll besides', async () => {
  const page = await office.signIn('dispatcher', { width: 1024, height: 768 });
  const decide = column(page, 'Decide now');
  await decide.getByRole('button', { name: /^Open/ }).waitFor();
  expect(await decide.evaluate((each) => each.scrollHeight - each.clientHeight)).toBeGreaterThan(0);
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBe(768);
});
