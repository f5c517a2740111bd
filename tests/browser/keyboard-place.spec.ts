import { randomUUID } from 'node:crypto';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { acceptHandPlan } from './testing/flown-monday.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

beforeAll(async () => {
  const manager = await office.api('operations manager');
  await acceptHandPlan({ manager, dataDir: office.dataDir });
});

const focused =
  'document.activeElement?.getAttribute("data-at") ?? document.activeElement?.getAttribute("data-place")';

describe('the place of the keyboard', () => {
  it('on Week and Caches the arrows start at once, and the list of keys says so', async () => {
    const page = await office.signIn('operations manager');
    for (const [key, ready] of [
      ['Alt+2', '.week-board [data-at]'],
      ['Alt+3', '.caches-grid [data-place]'],
    ] as const) {
      await page.keyboard.press(key);
      await page.locator(ready).first().waitFor();
      await page.keyboard.press('ArrowRight');
      expect(await page.evaluate(focused), key).not.toBeNull();
    }
    await page.keyboard.press('?');
    await page.getByRole('dialog').getByText('From cache to cache').first().waitFor();
  });

  it('after Approve the card stays, it is said aloud, and n leads into the card of the next to decide', async () => {
    const page = await office.signIn('operations manager');
    await page.keyboard.press('Alt+2');
    const card = page.getByRole('complementary', { name: 'Decision card' });
    const heading = card.getByRole('heading', { level: 2 }).first();
    await card.getByRole('button', { name: /^Approve/ }).waitFor();
    const [id] = (await heading.textContent())!.split(' ');
    await page.keyboard.press('a');
    await card
      .getByRole('status')
      .filter({ hasText: `${id} was approved; base has it.` })
      .waitFor();
    await card.getByText(/Approved$/).waitFor();
    expect(await heading.textContent()).toContain(id);
    expect(await page.evaluate('document.activeElement?.getAttribute("data-flight")')).toBe(id);
    await expectAccessible(page);
    // A second press of the same key approves nothing that was not looked at.
    await page.keyboard.press('a');
    expect(await heading.textContent()).toContain(id);

    const next = card.getByRole('button', { name: /^Next to decide: / });
    const [, nextId] = /: (F\d+)/.exec((await next.textContent()) ?? '')!;
    expect(nextId).not.toBe(id);
    await page.keyboard.press('n');
    await card.getByRole('heading', { level: 2, name: new RegExp(`^${nextId} `) }).waitFor();
    expect(await page.evaluate('document.activeElement?.id')).toBe('week-card');
  });

  it('a letter decides on no flight but the one where the keyboard is: on another box the keys rest, Enter opens it', async () => {
    const page = await office.signIn('operations manager');
    await page.keyboard.press('Alt+2');
    const card = page.getByRole('complementary', { name: 'Decision card' });
    await card.getByRole('button', { name: /^Decline/ }).waitFor();
    const [id] = (await card.getByRole('heading', { level: 2 }).first().textContent())!.split(' ');
    const other = page.locator(`.week-board .offered:not([data-flight="${id}"])`).first();
    const otherId = (await other.getAttribute('data-flight'))!;
    await other.focus();
    await card.getByText(`The keyboard is at ${otherId}: the keys of ${id} rest.`).waitFor();
    await page.keyboard.press('d');
    expect(await page.getByText(`Decline ${id}`).count()).toBe(0);
    await page.keyboard.press('Enter');
    await card.getByRole('heading', { level: 2, name: new RegExp(`^${otherId} `) }).waitFor();
    await page.keyboard.press('d');
    await card.getByText(`Decline ${otherId}`).first().waitFor();
  });

  it('after an act it is on the box of the flight', async () => {
    const page = await office.signIn('operations manager');
    await page.goto('/week/F06');
    await page.getByRole('button', { name: /^Hold in place/ }).waitFor();
    await page.keyboard.press('h');
    await page.getByRole('button', { name: /^Free to move/ }).waitFor();
    expect(await page.evaluate('document.activeElement?.getAttribute("data-flight")')).toBe('F06');
  });
});

it('a dialog never begins on Close, and after Esc the keyboard is on the page, each time', async () => {
  const page = await office.signIn('dispatcher');
  await page.goto('/week');
  const focused = () => page.evaluate(() => document.activeElement!.tagName);
  for (const _ of [1, 2]) {
    await page.locator('.week-board').waitFor();
    await page.keyboard.press('p');
    await page.locator('dialog[open]').waitFor();
    expect(await focused()).not.toBe('BUTTON');
    await page.keyboard.press('Escape');
    await page.locator('dialog[open]').waitFor({ state: 'detached' });
    expect(await focused()).toBe('H1');
  }
});

describe('what has closed leaves the keyboard on the page', () => {
  const isAt = async (page: Page) =>
    page.evaluate('document.activeElement.tagName + " " + document.activeElement.textContent');

  it('Enter in a count leads to the name of the cache', async () => {
    const page = await office.signIn('operations manager');
    await page.goto('/caches/XLOR');
    await page.getByRole('button', { name: /^Enter count/ }).waitFor();
    await page.keyboard.press('c');
    await page.getByLabel('Fuel found').fill('2200');
    await page.keyboard.press('Enter');
    await page.getByText('XLOR: count of 2,200 L is in the ledger.').waitFor();
    await expect.poll(() => isAt(page)).toBe('H2 XLOR');
  });

  it('a hold of 44 drums leads to what it has done', async () => {
    const page = await office.signIn('dispatcher');
    await page.goto('/drums');
    await page.getByRole('button', { name: /^Hold a batch/ }).waitFor();
    await page.keyboard.press('h');
    await page.getByRole('combobox', { name: 'Batch to hold' }).fill('J27-041');
    await page.getByRole('option', { name: /^J27-041/ }).waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.getByLabel('Reason').fill("Supplier's notice, water");
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: /^Batch J27-041 is held/ }).waitFor();
    await expect.poll(() => isAt(page)).toMatch(/^H2 Batch J27-041 is held/);
  });

  it.each([
    ['m', 'Amend'],
    ['d', 'Decline'],
  ])('Esc in the form of %s leads back', async (key, act) => {
    const page = await office.signIn('operations manager');
    await page.goto('/week/F08');
    const press = page.getByRole('button', { name: new RegExp(`^${act}`) }).first();
    await press.waitFor();
    for (const open of [() => page.keyboard.press(key), () => press.press('Enter')]) {
      await open();
      const form = page.getByRole('form', { name: `${act} F08` });
      await form.waitFor();
      await page.keyboard.press('Escape');
      await form.waitFor({ state: 'detached' });
      await expect.poll(() => isAt(page)).toMatch(/^H2 F08 /);
    }
  });

  it('in Differences: Esc in the options of a plan, and y', async () => {
    const manager = await office.api('operations manager');
    const id = randomUUID();
    await manager.put(`/api/plans/${id}`, { seconds: 2, seed: 3 });
    const state = async () => (await manager.get<{ state: string }>(`/api/plans/${id}`)).body.state;
    await expect.poll(state, { timeout: 60_000 }).toBe('solved');
    const page = await office.signIn('operations manager');
    await page.goto(`/week/compare/${id}`);
    const accept = page.getByRole('button', { name: /^Accept lines? \d/ });
    await accept.waitFor();
    await accept.focus();
    await page.keyboard.press('p');
    await page.locator('dialog[open]').waitFor();
    await page.keyboard.press('Escape');
    await page.locator('dialog[open]').waitFor({ state: 'detached' });
    await expect.poll(() => isAt(page)).toMatch(/^BUTTON Accept/);
    await page.keyboard.press('y');
    await accept.waitFor({ state: 'detached' });
    await expect.poll(() => isAt(page)).toBe('H1 Differences');
  }, 120_000);
});
