import { describe, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { boxOf, cardOf, openWeekDesk } from './testing/week-desk.js';

const desk = openWeekDesk();

const thousands = (amount: number): string => amount.toLocaleString('en-GB');

describe('the board', () => {
  it('has every flight as a box, and the cost as a sum that adds up', async () => {
    const page = await desk.openWeek();
    const { flights, cost } = await desk.week();
    for (const { id, drums, drumsPossible } of flights)
      await boxOf(page, id).getByText(`${drums} of ${drumsPossible}`).waitFor();
    const parts = [cost.flight, cost.fuel, cost.handling].map((cents) => Math.round(cents / 100));
    for (const part of parts)
      await page
        .getByText(`${thousands(part)} cr`)
        .first()
        .waitFor();
    const whole = parts.reduce((sum, part) => sum + part, 0);
    await page.getByText(`= ${thousands(whole)} cr`).waitFor();
    await expectAccessible(page);
  });

  it('hatches days on which nobody flies and aircraft that are out, each with its reason', async () => {
    const page = await desk.openWeek();
    await page.getByText('No flying day').first().waitFor();
    await page.getByText('Out: scheduled inspection').first().waitFor();
  });

  it('says how many drums a strip unloads of its limit', async () => {
    const page = await desk.openWeek();
    const { landings } = await desk.week();
    const [full] = landings.filter(({ drums, limitDrums }) => drums !== limitDrums);
    await page
      .getByRole('row', { name: /Drums landed/ })
      .getByText(`${full!.place} ${full!.drums} of ${full!.limitDrums}`)
      .first()
      .waitFor();
  });

  it('shows other days, and two weeks at once, and keeps the picture meanwhile', async () => {
    const page = await desk.openWeek();
    await page.keyboard.press('w');
    await page.getByRole('columnheader', { name: /Sun 27/ }).waitFor();
    await page.keyboard.press(']');
    await page
      .getByRole('columnheader', { name: /Mon 28|Sun 4/ })
      .first()
      .waitFor();
    await page.getByText('Checking...').waitFor({ state: 'detached' });
  });

  it('is readable in dim, at 1024 and on a phone', async () => {
    const page = await desk.openWeek({ width: 1024, height: 768 });
    await cardOf(page).getByText('Cost in three parts').waitFor();
    await expectAccessible(page);
    await page.evaluate(() => {
      document.documentElement.dataset.ground = 'dim';
    });
    await expectAccessible(page);
    await page.setViewportSize({ width: 400, height: 800 });
    await expectAccessible(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(400);
    // The sum in two lines, not a figure a line beside the buttons.
    const { height } = (await page.locator('.week-cost').boundingBox())!;
    expect(height).toBeLessThan(100);
  });
});
