import { beforeAll, describe, expect, it } from 'vitest';
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

  it('after an act it is on the box of the flight', async () => {
    const page = await office.signIn('operations manager');
    await page.goto('/week/F06');
    await page.getByRole('button', { name: /^Hold in place/ }).waitFor();
    await page.keyboard.press('h');
    await page.getByRole('button', { name: /^Free to move/ }).waitFor();
    expect(await page.evaluate('document.activeElement?.getAttribute("data-flight")')).toBe('F06');
  });
});
