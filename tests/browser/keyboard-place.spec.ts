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
