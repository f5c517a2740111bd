import type { Page } from 'playwright-core';
import { beforeAll, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { openLoadDesk } from './testing/load-desk.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });
beforeAll(async () => {
  const desk = await openLoadDesk({
    manager: await office.api('operations manager'),
    dispatcher: await office.api('dispatcher'),
    dataDir: office.dataDir,
  });
  const stops = [
    { place: 'XLOR', drums: 1, numbers: ['0577'] },
    { place: 'XGAN', drums: 4, numbers: ['0572', '0574', '0575', '0578'] },
  ];
  // The hands at XLOR unload six drums a day, and F05 brings six.
  await desk.act('F05', 'decline', { reason: 'not for this test' });
  await desk.act('F06', 'amend', { stops });
}, 120_000);

const shot = async (page: Page, name: string) => {
  if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/${name}.png`, fullPage: true });
};
const openLoad = async (at = { width: 1440, height: 900 }): Promise<Page> => {
  const page = await office.signIn('dispatcher', at);
  await page.goto('/load/F06');
  await page.getByText('Assumed:').first().waitFor();
  return page;
};

it('the labels of the balance graph lie over nothing: the names of its marks stand below it', async () => {
  const page = await openLoad();
  const names = page.getByRole('list', { name: 'Marks in the graph' });
  await names.getByText(/^if soft, take-off [\d.]+ in$/).waitFor();
  await names.getByText(/^zero fuel [\d.]+ in$/).waitFor();
  const over = await page.locator('.load-envelope .chart svg.load-balance').evaluate((graph) => {
    const boxes = [...graph.querySelectorAll('text')].map((text) => text.getBoundingClientRect());
    const sides = [...graph.querySelectorAll('line.envelope')].map((side) => side.getBoundingClientRect());
    const isOver = (a: DOMRect, b: DOMRect) =>
      a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
    return {
      texts: boxes.length,
      overEachOther: boxes.filter((a) => boxes.some((b) => a !== b && isOver(a, b))).length,
      overEnvelope: boxes.filter((a) => sides.some((side) => isOver(a, side))).length,
    };
  });
  expect(over.texts).toBeGreaterThan(5);
  expect(over).toMatchObject({ overEachOther: 0, overEnvelope: 0 });
});

it('the first of two stops is soft: all that goes is told, and the button leaves the strip out', async () => {
  const page = await openLoad();
  await page
    .getByText(/^If XLOR is soft: take 4 \(all for XGAN\), leave 0577 here\. Lands XLOR with [\d,]+ lb\.$/)
    .waitFor();
  await page.getByText('leave if XLOR is soft').waitFor();
  expect(await page.getByText('Do not go').count()).toBe(0);
  await page.getByRole('button', { name: /Leave out XLOR: take 4 \(all for XGAN\)/ }).click();
  const asked = page.getByRole('form', { name: 'Leave out XLOR: take 4 (all for XGAN)' });
  await asked.getByText(/does not land at XLOR: it flies XMER-XGAN-XMER\./).waitFor();
  await shot(page, 'load-two-stops');
  await expectAccessible(page);
  await asked.getByRole('button', { name: 'Leave it' }).click();
});

it('on a phone every figure of a limit is in sight, and what binds with it', async () => {
  const page = await openLoad({ width: 400, height: 860 });
  await page.getByRole('row', { name: /XLOR landing, dry.*lb/ }).waitFor();
  await shot(page, 'load-400');
  const outside = await page.locator('.load-legs').evaluate((legs) =>
    [...legs.querySelectorAll<HTMLElement>('th, td, td b, .relax')]
      .filter((each) => each.getClientRects().length > 0)
      .filter((each) => each.getBoundingClientRect().right > innerWidth)
      .map((each) => each.textContent),
  );
  expect(outside).toEqual([]);
  const over = await page.locator('.load-blocks').evaluateAll((bars) =>
    bars.flatMap((bar) => {
      const words = [...bar.querySelectorAll('text')].filter(
        (text) => text.getBoundingClientRect().width > 0,
      );
      const boxes = words.map((text) => text.getBoundingClientRect());
      return words
        .filter((_, at) =>
          boxes.some(
            (other, index) =>
              index !== at &&
              other.left < boxes[at]!.right - 1 &&
              boxes[at]!.left < other.right - 1 &&
              other.top < boxes[at]!.bottom - 3 &&
              boxes[at]!.top < other.bottom - 3,
          ),
        )
        .map((text) => text.textContent);
    }),
  );
  expect(over).toEqual([]);
});

it('pressed, it makes what it says: the next version flies to the other stop alone', async () => {
  const page = await openLoad();
  await page.getByRole('button', { name: /^Leave out XLOR/ }).click();
  await page.getByRole('button', { name: /^Make it version \d+$/ }).click();
  await page.getByText('XMER-XGAN-XMER', { exact: true }).waitFor();
  await page.getByText(/^If XGAN is soft: take 3, leave \d{4} here\. Lands with [\d,]+ lb\.$/).waitFor();
  await page.getByRole('button', { name: /^Take 3: leave \d{4}/ }).waitFor();
  await shot(page, 'load-left-out');
});
