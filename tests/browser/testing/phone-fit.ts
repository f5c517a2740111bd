import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { expectAccessible } from './expect-accessible.js';

/** A phone of the measure, the smallest that is sold, a tall one, and one that lies on its side. */
const sizes = [
  { width: 360, height: 640 },
  { width: 320, height: 568 },
  { width: 412, height: 915 },
  { width: 640, height: 360 },
] as const;

/** What is left of the measure above a phone's own keys. */
export const aboveKeys = { width: 360, height: 300 } as const;

/**
 * In every size nothing of the page is cut off, and everything that can be pressed can be seen whole and is under no
 * other thing; on the smallest, and lying, it is accessible by day and by night.
 */
export const expectFits = async (page: Page, name: string): Promise<void> => {
  const before = page.viewportSize()!;
  for (const size of [...sizes, before]) {
    await page.setViewportSize(size);
    await expectNothingLost(page, `${name} ${size.width} x ${size.height}`);
    if (size.width === 412) continue;
    for (const ground of ['dim', 'light']) {
      await page.evaluate((to) => (document.documentElement.dataset.ground = to), ground);
      await expectAccessible(page);
    }
  }
};

/** All of these buttons are seen whole at once, with nothing scrolled. */
export const expectInView = async (page: Page, buttons: readonly (string | RegExp)[]): Promise<void> => {
  for (const name of buttons)
    expect([name, await page.getByRole('button', { name }).evaluate(isInView)]).toEqual([name, true]);
};

/** Runs in the page: between the status line and the acts, whole. */
export const isInView = (part: Element): boolean => {
  const [own, reading] = [part, part.closest('.reading')!].map((each) => each.getBoundingClientRect());
  return own!.top >= reading!.top && own!.bottom <= reading!.bottom;
};

export const expectNothingLost = async (page: Page, name: string): Promise<void> =>
  expect([name, await page.evaluate(cutOff), await page.evaluate(outOfReach)]).toEqual([name, [], []]);

/** Runs in the page: what is wider than the phone, or cut off inside what it stands in. */
const cutOff = (): readonly string[] => {
  const wide = document.documentElement.scrollWidth > document.documentElement.clientWidth;
  const cut = [...document.querySelectorAll<HTMLElement>('main *:not(.vis-hide):not(.vis-hide *)')].filter(
    (each) =>
      each.scrollWidth > each.clientWidth + 1 &&
      each.clientWidth > 0 &&
      getComputedStyle(each).display !== 'inline' &&
      each.tagName !== 'INPUT',
  );
  return [...(wide ? ['the page'] : []), ...cut.map((each) => `${each.className}: ${each.textContent}`)];
};

/** Runs in the page: what can be pressed, and cannot be brought whole under a thumb. Leaves the page at its top. */
const outOfReach = (): readonly string[] => {
  const lost = [
    ...document.querySelectorAll<HTMLElement>('main :is(.btn, .row, .seat, .key, .choice, input)'),
  ]
    .filter((each) => !each.classList.contains('vis-hide'))
    .filter((each) => {
      each.scrollIntoView({ block: 'nearest' });
      const { left, top, width, height } = each.getBoundingClientRect();
      return [4, height / 2, height - 4].some((down) => {
        const hit = document.elementFromPoint(left + width / 2, top + down);
        return hit === null || !(each.contains(hit) || hit.contains(each));
      });
    });
  document.querySelector('.reading')?.scrollTo(0, 0);
  window.scrollTo(0, 0);
  return lost.map((each) => `${each.className}: ${each.textContent}`);
};
