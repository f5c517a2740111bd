import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { administratorOf } from './testing/first-sign-in.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true, demo: 'no' });
const signIn = administratorOf({ said: () => office.said() });

const step = async (page: Page, title: string): Promise<void> => {
  await page.getByRole('list', { name: 'Steps' }).getByRole('link', { name: title }).click();
};

/** A new thing, copied from the invented example, with some fields one's own. */
const copy = async (
  page: Page,
  one: string,
  example: string,
  fill: (form: Locator) => Promise<void> = async () => {},
) => {
  if (one !== 'territory' && one !== 'rules') await page.getByRole('button', { name: `New ${one}` }).click();
  const ofWhat = one === 'rules' ? 'invented rules' : `an invented ${one}`;
  await page.getByLabel(`Begin from ${ofWhat}`).selectOption({ label: example });
  const form = page.getByRole('form', { name: `New ${one}` });
  await fill(form);
  await form.getByRole('button', { name: 'Save' }).click();
  await page.getByText(`Saved: ${one}.`).waitFor();
};

it('the demo is loaded by one act and removed by one, when the word is typed', async () => {
  const page = await office.stranger();
  await signIn(page);
  // Nobody has to look for it: an installation without a territory opens at its set-up.
  await page.getByText('This installation is empty.').waitFor();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Load the demo' }).click();
  await page.getByText('Nothing. A plan can be asked for.').waitFor();
  await page.getByText('Hollowtarn Uplands').first().waitFor();
  // The steps of a first territory say at the top that there is one, with the way on; no empty form below.
  await page.goto('/set-up/begin');
  await page.getByText('A territory is set up here already.').waitFor();
  expect(await page.getByLabel('Title').count()).toBe(0);
  await expectAccessible(page);
  await page.getByRole('link', { name: 'Open Set-up' }).click();

  await page.getByText('Type the word remove.').waitFor();
  await page.getByLabel('Word').fill('remove');
  await page.getByRole('button', { name: 'Remove the demo and all entries' }).click();
  await page.getByText('This installation is empty.').waitFor();
  // The line at the top names no territory that is not there.
  await page.getByRole('banner').getByText('Hollowtarn Uplands').waitFor({ state: 'detached' });
  expect(await page.getByRole('banner').getByText('Operating date').count()).toBe(0);
});

it('a document with faults stays out, each fault by line and cell', async () => {
  const page = await office.stranger();
  await signIn(page);
  await page.goto('/set-up');
  const { body } = await (await page.request.get('/api/demo/example'))
    .json()
    .then((read) => ({ body: read }));
  body.caches[3].minimumLitres = '800';
  await page.getByLabel('Scenario document').setInputFiles({
    name: 'territory.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(body)),
  });
  const fault = page
    .getByRole('table', { name: 'Faults: 1' })
    .getByRole('row', { name: /caches 4 minimumLitres/ });
  expect(await fault.textContent()).toContain('Write the figure without quotes or unit.');
  await page.getByText('This installation is empty.').waitFor();
});

it('what was typed in a step stays when another step is opened without Save, after a reload too, and is told as not saved', async () => {
  const page = await office.stranger();
  await signIn(page);
  await page.goto('/set-up/begin');
  await page.getByLabel('Title').fill('North Shelf');
  await step(page, 'Places');
  await page.getByRole('button', { name: 'New place' }).click();
  await page.getByLabel('Code').fill('XNEW');
  await page.getByRole('list', { name: 'Steps' }).getByText('none yet, one not saved').first().waitFor();
  await step(page, 'Aircraft types');
  await page.reload();
  await step(page, 'Territory');
  expect(await page.getByLabel('Title').inputValue()).toBe('North Shelf');
  await expectAccessible(page);
  await step(page, 'Places');
  expect(await page.getByLabel('Code').inputValue()).toBe('XNEW');
  // Both ways to be done with it: forget it, or save it.
  await page.getByRole('button', { name: 'Forget what was typed' }).click();
  expect(await page.getByLabel('Code').inputValue()).toBe('');
  await step(page, 'Territory');
  await page.getByRole('button', { name: 'Forget what was typed' }).click();
  await page.getByText('one not saved').waitFor({ state: 'detached' });
});

it('a step says which comes next, shows how a word is written, and lets a fault go from a field that is filled in', async () => {
  const page = await office.stranger();
  await signIn(page);
  await page.goto('/set-up/begin');
  const zone = page.getByLabel('IANA time zone');
  await page.getByText('like Etc/GMT').waitFor();
  expect(await zone.evaluate((input: HTMLInputElement) => input.list?.options.length ?? 0)).toBeGreaterThan(
    100,
  );
  await page.getByText('Next step:').getByRole('link', { name: 'Fuel, crew, drum rules' }).click();
  await page.getByText('Next step:').getByRole('link', { name: 'Places' }).click();

  await page.getByRole('button', { name: 'New place' }).click();
  const form = page.getByRole('form', { name: 'New place' });
  await form.getByRole('button', { name: 'Save' }).click();
  // A choice that is not made is marked as a field that is not filled in.
  expect(await form.getByLabel('Kind').getAttribute('aria-invalid')).toBe('true');
  await form.getByLabel('Kind').selectOption('strip');
  await form.getByLabel('Code').fill('XNOR');
  expect(await form.getByLabel('Kind').getAttribute('aria-invalid')).toBeNull();
  expect(await form.getByLabel('Code').getAttribute('aria-invalid')).toBeNull();
  expect(await form.getByLabel('Name').getAttribute('aria-invalid')).toBe('true');
  await page.getByRole('button', { name: 'Forget what was typed' }).click();
});

it('the boxes of a row stand in line though one label takes two lines, and a fault in focus is not under the acts', async () => {
  const page = await office.stranger();
  await signIn(page);
  await page.goto('/set-up/begin/policy');
  await page.getByLabel('Begin from invented rules').selectOption({ label: 'the invented one' });
  const top = async (label: string) => (await page.getByLabel(label).boundingBox())!.y;
  expect(await top('Final reserve')).toBe(await top('Added to the air time of a leg for the block time'));
  await page.getByLabel('No departure before').fill('7am');
  await page.getByRole('button', { name: 'Save' }).click();
  const fault = page.getByText(/^Fault: "7am" does not fit/);
  const acts = page.getByRole('button', { name: 'Save' });
  await expect
    .poll(async () => {
      const [said, save] = [(await fault.boundingBox())!, (await acts.boundingBox())!];
      return said.y + said.height < save.y;
    })
    .toBe(true);
  await page.getByRole('button', { name: 'Forget what was typed' }).click();
});

it('a word that is wrong in a list of them is told at its field, as with a single one', async () => {
  const page = await office.stranger();
  await signIn(page);
  await page.goto('/set-up/begin');
  await step(page, 'Pilots');
  await page.getByRole('button', { name: 'New pilot' }).click();
  const form = page.getByRole('form', { name: 'New pilot' });
  await form.getByLabel('Pilot').fill('FW1');
  await form.getByLabel('Types flown').fill('A');
  await form.getByLabel('Strip classes cleared for').fill('1, many');
  await form.getByRole('button', { name: 'Save' }).click();
  await form.getByText('Fault: "many" does not fit: a strip class is 1, 2, 3 or 4.').waitFor();
  const wrong = form.getByLabel('Strip classes cleared for');
  expect(await wrong.getAttribute('aria-invalid')).toBe('true');
  await page.getByRole('button', { name: 'Forget what was typed' }).click();
});

it('from an empty installation to a first plan: a base, a strip with its cache, an aeroplane, a pilot, the rules', async () => {
  const page = await office.stranger();
  await signIn(page);
  await page.goto('/set-up');
  await page.getByRole('link', { name: 'Begin, step by step' }).click();
  // A morning without a picture says so once, on the page, and not beside each act.
  await page.goto('/morning');
  await page
    .getByText(/Not set up yet/)
    .first()
    .waitFor();
  await page.getByRole('button', { name: 'Medevac' }).waitFor({ state: 'detached' });
  expect(await page.getByText('There is no picture yet.').count()).toBe(0);
  await page.goto('/set-up/begin');
  const missing = page.getByRole('region', { name: 'Missing for a plan' });
  await missing.getByText('Missing: a base.').waitFor();
  await page.getByText('Something is missing still: see the list.').waitFor();
  await expectAccessible(page);

  await copy(page, 'territory', 'the invented one', (form) => form.getByLabel('Title').fill('North Shelf'));
  await step(page, 'Fuel, crew, drum rules');
  await copy(page, 'rules', 'the invented one');
  await step(page, 'Places');
  await copy(page, 'place', 'XMER');
  await copy(page, 'place', 'XLOR');
  await missing.getByText('Missing: a base.').waitFor({ state: 'detached' });
  await step(page, 'Bases: fuel, price');
  await copy(page, 'base', 'XMER');
  await step(page, 'Caches: levels');
  await copy(page, 'cache', 'XLOR');
  await step(page, 'Aircraft types');
  await copy(page, 'aircraft type', 'A');
  await step(page, 'Tails, availability');
  await copy(page, 'tail', 'A1');
  await missing.getByText('Missing: a strip limit of a type that you have, at a cache.').waitFor();
  await step(page, 'Strip limits');
  await copy(page, 'strip limit', 'XMER-A');
  // What a fault asks for is entered in another step: the way there is in the line.
  await missing.getByText('No type has strip limits at XLOR.').waitFor();
  await missing.getByRole('link', { name: 'Strip limits', exact: true }).waitFor();
  await copy(page, 'strip limit', 'XLOR-A');
  await step(page, 'Pilots');
  await copy(page, 'pilot', 'FW1');
  await missing.getByText('Nothing. A plan can be asked for.').waitFor();

  await page.getByRole('button', { name: 'Bring the territory in' }).click();
  // What a plan does not wait for is said there too: the drums that stand in the field, people, tie-down.
  const besides = page.getByRole('region', { name: 'Needed besides a plan' });
  await besides.getByRole('link', { name: 'batches' }).waitFor();
  await besides.getByRole('link', { name: 'People' }).waitFor();
  await page.getByRole('link', { name: 'Open the week and ask for a plan' }).click();
  await page.getByText('North Shelf').first().waitFor();
  await page.getByRole('heading', { level: 1, name: 'Week' }).waitFor();
  await page
    .getByRole('button', { name: /^(Re-plan|Plan)/ })
    .first()
    .click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: /^Plan/ }).click();
  await page
    .getByRole('button', { name: /^Accept/ })
    .first()
    .waitFor({ timeout: 120_000 });
  // Whatever the light of the day, so small a plan is proven.
  await page.getByText('at most 0 cr, 0.00 %').waitFor();
  // The cache begins with no drum: the first plan brings some.
  await page.getByText(/XLOR/).first().waitFor();
}, 240_000);
