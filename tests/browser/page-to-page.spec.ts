import { beforeAll, describe, expect, it } from 'vitest';
import { acceptHandPlan } from './testing/flown-monday.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

// By the names in the list of pages.
const pages = ['Morning', 'Week', 'Caches', 'Drums', 'Load', 'Map', 'Set-up'] as const;

/** A walk that goes over from every page to every other, once each: 0 1 0 2 0 3 ..., 1 2 1 3 ... */
const everyPair = pages.flatMap((from, at) => pages.slice(at + 1).flatMap((to) => [from, to]));

beforeAll(async () => {
  const manager = await office.api('operations manager');
  await acceptHandPlan({ manager, dataDir: office.dataDir });
});

describe('from page to page without loading again', () => {
  it('every page can be read after every other, and after a line from the radio was opened', async () => {
    const page = await office.signIn('operations manager');
    await page.goto('/morning');
    const go = async (name: (typeof pages)[number]): Promise<void> => {
      await page.keyboard.press(`Alt+${pages.indexOf(name) + 1}`);
      await page.getByRole('heading', { level: 1, name: new RegExp(name) }).waitFor();
      await page.getByText('Checking...').first().waitFor({ state: 'detached' });
    };
    const walk = [...everyPair, ...everyPair.toReversed()];
    for (const [step, name] of walk.entries()) {
      await go(name);
      const problem = await page.getByText(/cannot be read|this page has a mistake/i).allTextContents();
      expect(problem, `${name} after ${walk[step - 1] ?? 'Morning'}`).toEqual([]);
    }
    await page.keyboard.press('r');
    await page.keyboard.type('LOR dry 0550 helper');
    await page
      .getByRole('dialog', { name: 'Radio report' })
      .getByText(/XLOR dry, 05:50/)
      .waitFor();
    await page.keyboard.press('Escape');
    await go('Caches');
    await go('Map');
    await page.getByRole('button', { name: /^XLOR Lorn Moss/ }).waitFor();
  }, 180_000);
});
