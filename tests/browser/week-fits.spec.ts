import type { WeekFlight } from '@drumline/contract';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { brokenWords, cutWords } from './testing/cut-words.js';
import { openCrowded, openMade, openReference } from './testing/made-weeks.js';
import { openWeekDesk } from './testing/week-desk.js';

const desk = openWeekDesk();

/** More drums go than may, and somebody has to decide. */
const waiting: Partial<WeekFlight> = {
  drumsPossible: 1,
  binding: { name: 'strip landing limit', place: 'XLOR' },
  needsDecision: 'XLOR is soft.',
};

const office = { width: 1440, height: 900 };
const middle = { width: 1280, height: 800 };
const small = { width: 1024, height: 768 };

describe('the board', () => {
  it.each([
    [7, { width: 1440, height: 900 }, /landing/],
    [7, { width: 1280, height: 800 }, /landing/],
    [7, { width: 1024, height: 768 }, /landing/],
    [14, { width: 1440, height: 900 }, /ldg/],
    [14, { width: 1280, height: 800 }, /ldg/],
    [14, { width: 1024, height: 768 }, /ldg/],
  ])(
    'names in %i days at %o when it is off, its state and what binds, also where more drums go than may and somebody has to decide; no box cuts a word',
    async (days, at, limit) => {
      const states = ['approved', 'given', 'offered', 'reported'] as const;
      const page = await openReference(desk, { at, days, states, each: waiting });
      expect(await page.locator('button.flight-box').evaluateAll(cutWords)).toEqual([]);
      const said = await page.locator('button.flight-box:not(.booked)').allInnerTexts();
      expect(said.length).toBeGreaterThan(10);
      for (const words of said) {
        for (const each of [
          /Needs a decision/,
          /Approved|Given|Offered|Reported/,
          /\d\/1\b|\d of 1\b/,
          limit,
        ])
          expect(words).toMatch(each);
        if (days === 7) expect(words).toMatch(/F0\d\d\s+(07|13):00/);
      }
    },
  );

  it.each([
    [7, office],
    [14, office],
    [14, middle],
    [7, small],
    [14, small],
  ])('has every aircraft of the demo and every day without scrolling, %i days at %o', async (days, at) => {
    const page = await openReference(desk, { at, days });
    const { aircraft } = await desk.week();
    expect(await page.getByRole('grid').getByRole('row').count()).toBe(1 + aircraft.length + 1);
    expect(await hiddenOf(page)).toEqual({ down: 0, across: 0, page: 0 });
  });

  it.each([
    [7, office],
    [14, office],
    [14, middle],
    [7, small],
    [14, small],
  ])('has them where every flight needs a decision too, %i days at %o', async (days, at) => {
    const page = await openReference(desk, { at, days, each: { needsDecision: 'Batch J27-041 is held.' } });
    expect(await page.getByText('Needs a decision').count()).toBeGreaterThan(15);
    expect(await hiddenOf(page)).toEqual({ down: 0, across: 0, page: 0 });
  });

  it.each([
    [7, office],
    [14, office],
    [14, middle],
    [7, small],
    [14, small],
  ])('breaks no word of a flight, of a day or of an absence, %i days at %o', async (days, at) => {
    const page = await openReference(desk, { at, days, each: { needsDecision: 'Batch J27-041 is held.' } });
    expect(await page.getByRole('grid').getByText('Out').count()).toBeGreaterThan(2);
    expect(await page.getByRole('grid').evaluate(brokenWords)).toEqual([]);
  });

  it('leaves a reason to the key whose words are too long for a day of two weeks', async () => {
    const page = await openMade(desk, { at: office, days: 14 }, ({ aircraft: [first] }) => ({
      aircraft: [
        { ...first!, absences: [{ from: '2027-06-14', until: '2027-06-16', reason: 'unserviceable' }] },
      ],
    }));
    expect(await page.getByRole('grid').evaluate(brokenWords)).toEqual([]);
    await page.locator('.week-legend').getByText('Out: A1 unserviceable').waitFor();
  });

  it('that has to scroll keeps the days and the drums landed in sight', async () => {
    const page = await openCrowded(desk, { at: small, days: 14 });
    expect((await hiddenOf(page)).down).toBeGreaterThan(50);
    const board = page.getByRole('grid');
    const { height, y } = (await board.boundingBox())!;
    for (const part of [0, 0.5, 1]) {
      await board.evaluate((element, down) => element.scrollTo(0, down * element.scrollHeight), part);
      const head = (await board.getByRole('columnheader').first().boundingBox())!;
      const landed = (await board.getByRole('row', { name: /Drums landed/ }).boundingBox())!;
      expect([head.y, landed.y + landed.height].map((at) => Math.round(at - y))).toEqual([
        0,
        Math.round(height),
      ]);
    }
  });

  it('of three flights in every half day says of each what binds, and every landing limit at 1024', async () => {
    const page = await openCrowded(desk, { at: small });
    const { landings, aircraft } = await desk.week();
    expect(await page.locator('.flight-box .binds:visible').count()).toBe(6 * aircraft.length);
    // Where nobody knows a strip the card may name its soft limit: the board says that its own is the planned one.
    await page.locator('.week-legend').getByText('limit as planned').waitFor();
    for (const { place, drums, limitDrums } of landings)
      if (limitDrums !== null && drums <= limitDrums)
        await page
          .locator('.week-landings')
          .getByText(`${drums} of ${limitDrums}`, { exact: false })
          .locator('visible=true')
          .first()
          .waitFor({ timeout: 5_000 })
          .catch(() => expect.fail(`${place} has lost its limit`));
  });
});

/** What scrolls out of sight of the board and of the page, px. */
const hiddenOf = (page: Page) =>
  page.getByRole('grid').evaluate((element) => ({
    down: element.scrollHeight - element.clientHeight,
    across: element.scrollWidth - element.clientWidth,
    page: document.documentElement.scrollHeight - window.innerHeight,
  }));
