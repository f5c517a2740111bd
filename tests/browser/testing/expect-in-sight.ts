import type { Locator } from 'playwright-core';
import { expect } from 'vitest';

/** All that is pressed or typed into in this form can be seen as the page stands: nothing that scrolls hides a part of it. */
export const expectInSight = async (form: Locator): Promise<void> => {
  expect(await form.evaluate(hiddenIn)).toEqual([]);
};

/** Runs in the page. */
const hiddenIn = (form: Element): readonly string[] => {
  const isIn = (inner: DOMRect, outer: { top: number; left: number; right: number; bottom: number }) =>
    inner.top >= outer.top - 1 &&
    inner.left >= outer.left - 1 &&
    inner.right <= outer.right + 1 &&
    inner.bottom <= outer.bottom + 1;
  const isHidden = (each: Element): boolean => {
    const box = each.getBoundingClientRect();
    if (!isIn(box, { top: 0, left: 0, right: innerWidth, bottom: innerHeight })) return true;
    for (let around = each.parentElement; around !== null; around = around.parentElement) {
      const { overflowX, overflowY } = getComputedStyle(around);
      const isOpen = overflowX === 'visible' && overflowY === 'visible';
      if (!isOpen && !isIn(box, around.getBoundingClientRect())) return true;
    }
    return false;
  };
  return [...form.querySelectorAll<HTMLElement>('button, input, select, textarea')]
    .filter((each) => each.offsetParent !== null && isHidden(each))
    .map((each) => (each instanceof HTMLButtonElement ? each : each.closest('.entry'))?.textContent ?? '');
};
