import { describe, expect, it } from 'vitest';
import { openCrowded } from './testing/made-weeks.js';
import { openWeekDesk } from './testing/week-desk.js';

const desk = openWeekDesk();

describe('the board', () => {
  it.each([
    [1, 7],
    [2, 7],
    [3, 7],
    [3, 14],
  ])('is printed on one landscape page, %i flights in every half day, %i days', async (perHalf, days) => {
    const page = await openCrowded(desk, { perHalf, days });
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    expect(pdf).toMatch(/\/MediaBox \[0 0 84[12](\.\d+)? 59[45](\.\d+)?\]/);
  });
});

it('is printed in nine points and more as the demo stands', async () => {
  const page = await desk.openWeek();
  await page.emulateMedia({ media: 'print' });
  const smallest = await page.evaluate(() => {
    const board = document.querySelector<HTMLElement>('.week-board')!;
    const scale = Number(getComputedStyle(board).getPropertyValue('--print-scale'));
    const sizes = [...board.querySelectorAll<HTMLElement>('.flight-box > *, .band-cell p, .why')]
      .filter((element) => element.offsetParent !== null)
      .map((element) => Number.parseFloat(getComputedStyle(element).fontSize) * scale);
    return Math.min(...sizes);
  });
  expect(smallest).toBeGreaterThanOrEqual(12); // px: 9 pt
});

it('is printed with the revision of the strip limits once, in its title', async () => {
  const page = await desk.openWeek();
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 1024, height: 768 });
  expect(await page.getByText('Strip limits').filter({ visible: true }).count()).toBe(1);
});
