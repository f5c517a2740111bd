import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { acceptHandPlan } from './testing/flown-monday.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

const sizes = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
] as const;

const openAt = async (size: (typeof sizes)[number], place: string): Promise<Page> => {
  const page = await office.signIn('dispatcher', size);
  await page.goto(`/caches/${place}`);
  await page.getByRole('table', { name: `${place} day by day` }).waitFor();
  return page;
};

/** Runs in the page: what stands in a cell of a cache and is wider or lower than the cell shows. */
const cutInCells = (): readonly string[] =>
  [...document.querySelectorAll<HTMLElement>('.cache-cell :is(.head, .named, .foot) > *:not(.more)')]
    .filter((each) => each.offsetParent !== null)
    .filter((each) => {
      const { right, bottom } = each.getBoundingClientRect();
      const cell = each.closest('.cache-cell')!.getBoundingClientRect();
      return right > cell.right || bottom > cell.bottom || each.scrollWidth > each.clientWidth + 1;
    })
    .map((each) => each.textContent);

/** Runs in the page: counts of deliveries of one cache of which one lies over the other. */
const countsOverCounts = (): readonly string[] =>
  [...document.querySelectorAll('.cache-cell')].flatMap((cell) => {
    const counts = [...cell.querySelectorAll('.delivery text')];
    return counts.flatMap((one, index) =>
      counts.slice(index + 1).flatMap((other) => {
        const [a, b] = [one.getBoundingClientRect(), other.getBoundingClientRect()];
        // Letters are lower than their line.
        const apart = a.right <= b.left || b.right <= a.left || Math.abs(a.bottom - b.bottom) >= 11;
        return apart ? [] : [`${one.textContent} and ${other.textContent}`];
      }),
    );
  });

const expectDaysWhole = async (page: Page): Promise<void> => {
  const days = page.getByRole('table', { name: 'day by day' });
  await days.getByRole('columnheader', { name: 'Without' }).waitFor();
  expect(
    await days.evaluate((table) => {
      const side = table.closest('.cache-side')!;
      return side.scrollWidth <= side.clientWidth && table.getBoundingClientRect().right <= innerWidth;
    }),
  ).toBe(true);
};

describe.each(sizes)('at $width, without a plan', (size) => {
  it('how the graphs are read can be read to its end', async () => {
    const page = await openAt(size, 'XLOR');
    const [high, room] = await page
      .getByRole('listitem')
      .filter({ hasText: 'How to read' })
      .first()
      .evaluate((key) => [key.scrollHeight, key.clientHeight]);
    expect(high).toBeLessThanOrEqual(room);
  });

  it('every caption can be read to its end, and each day with and without deliveries', async () => {
    const page = await openAt(size, 'XLOR');
    await page.getByText('runs out Tue 15, 1,515 L short', { exact: true }).waitFor();
    expect(await page.evaluate(cutInCells)).toEqual([]);
    await expectDaysWhole(page);
  });
});

describe.each(sizes)('at $width, with flights', (size) => {
  it('all as tables: no day and no caption stands outside of the page', async () => {
    const page = await openAt(size, 'XESK');
    await page.keyboard.press('t');
    const tables = page.getByRole('region', { name: 'All caches as tables' });
    await tables.getByText('Minimum, cover and count').waitFor();
    await tables.getByRole('columnheader', { name: 'Sun 27' }).waitFor();
    const [wide, room] = await tables.evaluate((area) => [area.scrollWidth, area.clientWidth]);
    expect(wide).toBeLessThanOrEqual(room);
  });

  it('no count of drums lies over another, and nothing is cut', async () => {
    const manager = await office.api('operations manager');
    if ((await manager.get<{ flights: object[] }>('/api/week')).body.flights.length === 0)
      await acceptHandPlan({ manager, dataDir: office.dataDir });
    const page = await openAt(size, 'XESK');
    await page.locator('.delivery text').nth(8).waitFor({ state: 'attached' });
    expect(await page.evaluate(countsOverCounts)).toEqual([]);
    expect(await page.evaluate(cutInCells)).toEqual([]);
    await expectDaysWhole(page);
  });
});
