import axe, { type AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

const wcag22aa = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa', 'best-practice'];

/** Nothing on the page as it stands that axe finds against WCAG 2.2 AA. */
export const expectAccessible = async (page: Page): Promise<void> => {
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate(
    (values) =>
      (window as unknown as { axe: { run: (options: object) => Promise<AxeResults> } }).axe.run({
        runOnly: { type: 'tag', values },
        resultTypes: ['violations'],
      }),
    wcag22aa,
  );
  expect(
    violations.map(({ id, help, nodes }) => `${id}: ${help}: ${nodes.map(({ html }) => html).join(' | ')}`),
  ).toEqual([]);
};
