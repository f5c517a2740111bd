import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { acceptHandPlan } from './testing/flown-monday.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true, breaksTheLine: true });

/** How many answers of this path have come to the page from now on. */
const answersOf = (page: Page, path: string): (() => number) => {
  let count = 0;
  page.on('requestfinished', (request) => {
    if (request.url().includes(path)) count += 1;
  });
  return () => count;
};

it('Morning after a plan was accepted on Week and base fell silent: the flights, and what was reported here meanwhile', async () => {
  const page = await office.signIn('operations manager');
  page.setDefaultTimeout(20_000);
  await page.clock.install();
  const drums = answersOf(page, '/api/drums?');
  await page.reload();
  await page.getByText('No plan stands').waitFor();
  await page.keyboard.press('Alt+2');
  await page.getByText('No flights offered').waitFor();
  const manager = await office.api('operations manager');
  const morning = answersOf(page, '/api/morning');
  const flights = answersOf(page, '/api/flights?from=');
  await acceptHandPlan({ manager, dataDir: office.dataDir });
  await page.clock.runFor(5_000);
  await page.getByRole('button', { name: /^F01/ }).first().waitFor();
  // The page that is not open was read again too.
  await expect.poll(morning, { timeout: 30_000 }).toBeGreaterThan(0);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  // So is, without Morning being opened again, what lines of Radio and paper are read by.
  await expect
    .poll(
      async () => {
        await page.clock.fastForward('02:00');
        return Math.min(drums(), flights());
      },
      { timeout: 60_000, interval: 1_000 },
    )
    .toBeGreaterThan(0);
  await office.halt();

  await page.keyboard.press('Alt+1');
  await page.getByText('F01, ').first().waitFor();
  expect(await page.getByText('No plan').count()).toBe(0);

  // Nobody has opened the radio line before: what the line means is known all the same.
  await page.keyboard.press('r');
  const dialog = page.getByRole('dialog', { name: 'Radio report' });
  await dialog.waitFor();
  await page.keyboard.type('DUN soft 0540 J. Holm');
  await dialog.getByText('XDUN soft, 05:40, J. Holm, by radio').waitFor();
  await page.keyboard.press('Enter');
  await dialog.getByText(/Kept on this machine until base has it/).waitFor();
  await page.keyboard.press('Escape');
  const kept = page.getByRole('row', { name: 'Kept here, not sent' });
  await kept.getByText('05:40 J. Holm').waitFor();
  await page.getByText('Kept here, not sent: soft, 05:40, J. Holm, by radio.').waitFor();

  await page.keyboard.press('p');
  await page.getByLabel('One line of the sheet').waitFor();
  await page.keyboard.type('counted LOR 2150 L 10 sealed 1 open 3 empty at 0550 by J. Holm');
  await page.keyboard.press('Enter');
  await page.getByText('2 entries waiting').waitFor();
  // The flights of the plan are known too, though nobody has been here before.
  await page.keyboard.type('F01 off 0602 by J. Holm');
  await page.getByText(/^F01 is offered, not given to a pilot/).waitFor();
  await page.keyboard.press('Alt+1');

  // A page that is loaded anew counts from the last answer, not from its own beginning.
  await page.clock.fastForward('07:00');
  await page.reload();
  await page.getByText(/^Not with base for [789] min$/).waitFor();
  await kept.getByText('05:40 J. Holm').waitFor();

  await office.startAgain();
  await page.clock.runFor(10_000);
  await page.getByText('No entries waiting').waitFor();
  await kept.waitFor({ state: 'detached' });
}, 180_000);

it('a kept picture of before the plan says of when it is, and offers no plan', async () => {
  const page = await office.signIn('dispatcher');
  page.setDefaultTimeout(20_000);
  await page.getByText('Decide now').waitFor();
  // The picture this machine kept was read before there was a plan.
  await page.evaluate(async () => {
    const name = (await caches.keys()).find((each) => each.startsWith('drumline.pictures.'))!;
    const store = await caches.open(name);
    const asked = `/pictures/${encodeURIComponent(JSON.stringify(['/api/morning']))}`;
    const kept = (await store.match(asked))!;
    const body = { ...(await kept.json()), flightsStanding: 0, flights: [] };
    await store.put(asked, Response.json(body, { headers: kept.headers }));
  });
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await office.halt();
  await page.reload();
  await page.getByRole('button', { name: /^No plan stood at \d\d:\d\d/ }).focus();
  await page.getByRole('button', { name: 'Open week' }).waitFor();
  expect(await page.getByRole('button', { name: 'Plan the week' }).count()).toBe(0);
  await office.startAgain();
}, 120_000);
