import { randomUUID } from 'node:crypto';
import type { PlanDifferencesAnswer, WeekAnswer, WeekFlight } from '@drumline/contract';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { Client } from '../../apps/server/src/testing/client.js';
import { expectAccessible } from './testing/expect-accessible.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });
let dispatcher: Client;

// Plans of two seconds are enough: what is shown is asked of the server, not expected of the solver.
const plan = async (rest: object = {}): Promise<string> => {
  const id = randomUUID();
  expect((await dispatcher.put(`/api/plans/${id}`, { seconds: 2, seed: 3, ...rest })).status).toBe(202);
  const isSolved = async () =>
    (await dispatcher.get<{ state: string }>(`/api/plans/${id}`)).body.state === 'solved';
  await vi.waitUntil(isSolved, { timeout: 90_000, interval: 500 });
  return id;
};
const week = async (): Promise<WeekAnswer> => (await dispatcher.get<WeekAnswer>('/api/week')).body;
const stateOf = async (id: string) =>
  (await dispatcher.get<{ state: string }>(`/api/flights/${id}`)).body.state;
const differencesOf = async (id: string, ...without: readonly string[]) =>
  (await dispatcher.get<PlanDifferencesAnswer>(`/api/plans/${id}/differences?without=${without.join(',')}`))
    .body;
const act = (name: string, { id, revision }: WeekFlight) =>
  dispatcher.post(`/api/flights/${id}/${name}`, {}, { headers: { 'If-Match': `"${revision}"` } });

const openDifferences = async (id: string): Promise<Page> => {
  const page = await office.signIn('dispatcher');
  await page.goto(`/week/compare/${id}`);
  await page.getByRole('table', { name: 'Differences, line by line' }).waitFor();
  return page;
};

/** The first plan as if it differed from what stood by so many flights. */
const openDifferencesWith = async (lines: Record<'removed' | 'added' | 'moved', number>): Promise<Page> => {
  const page = await office.signIn('dispatcher');
  await page.route('**/differences*', async (route) => {
    const response = await route.fetch();
    const answer = (await response.json()) as PlanDifferencesAnswer;
    const flights = [...answer.same.map(({ after }) => after), ...answer.added];
    const take = (count: number, tens: number) =>
      Array.from({ length: count }, (_, nth) => ({
        ...flights[nth % flights.length]!,
        id: `F${tens + nth}`,
      }));
    const moved = take(lines.moved, 40).map((before) => ({
      before,
      after: { ...before, date: '2027-06-19' },
    }));
    const json = {
      ...answer,
      removed: take(lines.removed, 20),
      added: take(lines.added, 30),
      moved,
      same: [],
    };
    await route.fulfill({ response, json });
  });
  await page.goto(`/week/compare/${first}`);
  const list = page.getByRole('table', { name: 'Differences, line by line' });
  await list.getByRole('rowheader', { name: 'F41' }).waitFor();
  const all = lines.removed + lines.added + lines.moved;
  expect(await list.locator('td.ln:not(:empty)').count()).toBe(all);
  return page;
};

const printed = async (page: Page) => {
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  return {
    pages: pdf.match(/\/Type\s*\/Page\b/g)?.length,
    isLandscape: /\/MediaBox \[0 0 84[12](\.\d+)? 59[45](\.\d+)?\]/.test(pdf),
  };
};

/** Of what is read on paper, as large as it is printed. */
const smallestInPoints = async (page: Page): Promise<number> => {
  await page.emulateMedia({ media: 'print' });
  const pixels = await page.evaluate(() =>
    Math.min(
      ...[...document.querySelectorAll<HTMLElement>('main :is(td, th, p, li, dd, h2, small)')]
        .filter((element) => element.offsetParent !== null && element.textContent !== '')
        .filter((element) => !element.classList.contains('unseen'))
        .map((element) => Number.parseFloat(getComputedStyle(element).fontSize) * element.currentCSSZoom),
    ),
  );
  return (pixels * 72) / 96;
};
const lowestIn = async (text: Promise<string | null>): Promise<string | undefined> =>
  /([\d,]+) L/.exec((await text) ?? '')?.[1];

let first: string;
beforeAll(async () => {
  dispatcher = await office.api('dispatcher');
  first = await plan();
  expect((await dispatcher.post(`/api/plans/${first}/accept`, {})).status).toBe(200);
}, 120_000);

describe('the ruler of the plan', () => {
  it('says how many flights it is of, and is gone once one of them is called off', async () => {
    const page = await office.signIn('dispatcher');
    await withGap(page);
    await page.goto('/week');
    const { flights, plan: standing } = await week();
    const ruler = page.getByRole('img', { name: /^Plan 1 as accepted/ });
    const offered = standing!.flights - standing!.laterIdeas;
    await page.getByRole('img', { name: new RegExp(`as accepted, ${offered} flights?`) }).waitFor();
    const flight = flights.find(({ state }) => state === 'offered')!;
    expect((await act('approve', flight)).status).toBe(200);
    await page.goto(`/week/${flight.id}`);
    await ruler.waitFor();
    await page.getByRole('button', { name: /^Call off/ }).waitFor();
    await page.keyboard.press('c');
    const form = page.getByRole('form', { name: `Call off ${flight.id}` });
    await form.getByLabel('Reason').selectOption('Weather');
    await form.getByRole('button', { name: `Call off ${flight.id}` }).click();
    await page.getByRole('button', { name: 'Send now' }).click();
    await ruler.waitFor({ state: 'detached' });
    expect(await stateOf(flight.id)).toBe('called off');
  });
});

describe('one rule for levels', () => {
  it('a cache has the same lowest level on Differences, Caches and Week, and each says what it counts', async () => {
    const { flights } = await week();
    const flight = flights.find(({ state, route }) => state === 'offered' && route.length === 3)!;
    const place = flight.route[1]!;
    const page = await openDifferences(await plan());
    const words = /with approved and offered flights/;
    const levels = page.getByRole('table', { name: /^Lowest level per cache/ });
    await levels.getByText(words).waitFor();
    const onDifferences = await lowestIn(
      levels.getByRole('row', { name: new RegExp(`^${place}`) }).textContent(),
    );
    await page.goto(`/caches/${place}`);
    await page.getByText(words).first().waitFor();
    const onCaches = await lowestIn(
      page
        .getByRole('button', { name: new RegExp(`^${place}\\b`) })
        .getByText(/^lowest/)
        .textContent(),
    );
    await page.goto(`/week/${flight.id}`);
    await page.getByText('If declined', { exact: true }).waitFor();
    await page.keyboard.press('d');
    const onWeek = await lowestIn(
      page
        .getByRole('table', { name: words })
        .getByRole('row', { name: new RegExp(`^${place}`) })
        .textContent(),
    );
    expect([onCaches, onWeek]).toEqual([onDifferences, onDifferences]);
  });
});

describe('the level of a cache day by day', () => {
  it('is of the cache that changes most, as the server has it; another can be chosen, and it is a table too', async () => {
    const id = await plan({ endTarget: 'minimum', changePrice: 0, seed: 7 });
    const { levels, lowest } = await differencesOf(id);
    const changes = ({ before, after }: (typeof levels)[number]) =>
      before.reduce((sum, litres, day) => sum + Math.abs(litres - after[day]!), 0);
    const changed = levels
      .filter((cache) => changes(cache) > 0)
      .toSorted((one, other) => changes(other) - changes(one));
    expect(changed.length).toBeGreaterThan(1);
    const page = await openDifferences(id);
    const lowestOf = (of: string) => lowest.find(({ place }) => place === of)!;
    const drawn = async ({ place }: { readonly place: string }) => {
      const { beforeLitres } = lowestOf(place);
      const said = beforeLitres < 0 ? 'short' : `${beforeLitres.toLocaleString('en-GB')} L`;
      await page
        .getByRole('img', {
          name: new RegExp(`^${place} at the end of a day: standing at its lowest ${said}`),
        })
        .waitFor();
    };
    await drawn(changed[0]!);
    const choice = page.getByLabel(`Cache, ${changed.length} change`);
    await choice.selectOption(changed[1]!.place);
    await drawn(changed[1]!);
    await page.getByText('As a table').click();
    const { place, dates } = changed[1]!;
    const table = page.getByRole('table', { name: `${place} with either plan` });
    expect(await table.getByRole('row').count()).toBe(dates.length + 1);
    await expectAccessible(page);
  });
});

describe('the list of differences', () => {
  it('of a plan with a newer one says so, and opens it in its place', async () => {
    const newer = await plan({ seed: 4 });
    const page = await openDifferences(first);
    await page.getByText('There is a newer plan').waitFor();
    await expectAccessible(page);
    await page.keyboard.press('n');
    await page.waitForURL(`**/week/compare/${newer}`);
    await page.getByText('There is a newer plan').waitFor({ state: 'detached' });
  });

  it('is accepted line by line: what is left is worked out and checked anew before', async () => {
    const id = await plan({ endTarget: 'minimum', changePrice: 0, seed: 5 });
    const keys = openKeys(await differencesOf(id));
    const stays = await firstWithoutFault(id, keys);
    const page = await openDifferences(id);
    await page.keyboard.press('b');
    await page.getByRole('checkbox').nth(keys.indexOf(stays)).uncheck();
    await page.getByText(/^left out/).waitFor();
    await expectAccessible(page);
    const part = await differencesOf(id, stays);
    await page
      .getByRole('row', { name: /^Drums / })
      .getByText(String(part.totals.after.drums))
      .first()
      .waitFor();
    await page.getByRole('button', { name: /^Accept lines? / }).click();
    await page.getByText('Lines left out: 1.').waitFor();
    const { body } = await dispatcher.get<{ accepted: { leftOut: string[] } }>(`/api/plans/${id}`);
    expect(body.accepted.leftOut).toEqual([stays]);
  });

  it('of a few lines is printed on one landscape page, none of it below eight points', async () => {
    const page = await openDifferencesWith({ removed: 3, added: 3, moved: 2 });
    expect(await printed(page)).toEqual({ pages: 1, isLandscape: true });
    expect(await smallestInPoints(page)).toBeGreaterThanOrEqual(8);
  });

  it('of about twenty lines is printed on two, in nine points and more', async () => {
    const page = await openDifferencesWith({ removed: 6, added: 6, moved: 5 });
    expect(await printed(page)).toEqual({ pages: 2, isLandscape: true });
    expect(await smallestInPoints(page)).toBeGreaterThanOrEqual(9);
  });

  it('lets frozen flights go that cannot be flown, in one act, and plans again', async () => {
    const flight = (await week()).flights.find(
      ({ state, route, date, today = '2027-06-14' }: WeekFlight & { today?: string }) =>
        state === 'offered' && route.length === 3 && date > today,
    )!;
    expect((await act('approve', flight)).status).toBe(200);
    const closed = { place: flight.route[1], state: 'closed', at: '2027-06-14T06:00Z', by: 'strip helper' };
    await dispatcher.put(`/api/surface-reports/${randomUUID()}`, { ...closed, untilDate: '2027-06-20' });
    const id = await plan({ seed: 6 });
    const page = await openDifferences(id);
    await page.getByText(`The plan counts on ${flight.id}, which cannot be flown as it stands.`).waitFor();
    const foot = page.locator('.compare-foot');
    await foot.getByRole('checkbox', { name: `Let go ${flight.id}, approved` }).check();
    expect(await foot.getByLabel('Why, in the name of Demo dispatcher').inputValue()).toContain('closed');
    await expectAccessible(page);
    await foot.getByText(`Before the plan is made, at this press: ${flight.id} is offered again`).waitFor();
    await foot.getByRole('button', { name: 'Let go and plan again' }).click();
    await page.waitForURL((url) => url.pathname.startsWith('/week/compare/') && !url.pathname.endsWith(id));
    expect(await stateOf(flight.id)).toBe('offered');
    await page.getByRole('heading', { level: 1, name: 'Differences' }).waitFor({ timeout: 90_000 });
    await page
      .getByText(`${flight.id} was let go when this plan was asked for.`)
      .waitFor({ timeout: 60_000 });
    await page
      .getByRole('row', { name: new RegExp(`^\\d+ ${flight.id} .*(Removed|A\\d|B\\d|C\\d)`) })
      .waitFor({ timeout: 60_000 });
  }, 120_000);
});

/** A plan of two seconds has nothing proved of it: the ruler is drawn with a gap all the same. */
const withGap = (page: Page) =>
  page.route('**/api/week**', async (route) => {
    const response = await route.fetch();
    const answer = (await response.json()) as WeekAnswer;
    const gap = { savedAtMost: 23_700, share: 0.0045 };
    await route.fulfill({
      response,
      json: { ...answer, plan: answer.plan && { ...answer.plan, moneyGap: gap } },
    });
  });

/** Lines that can be left out, as they stand on the page. */
const openKeys = ({ removed, moved, added, drumsChanged, mayLeaveOut }: PlanDifferencesAnswer) =>
  [...removed, ...moved.map(({ after }) => after), ...added, ...drumsChanged.map(({ after }) => after)]
    .map(({ id }) => id)
    .filter((id) => mayLeaveOut.includes(id));

/** A line that may be left out without breaking a limit. */
const firstWithoutFault = async (id: string, keys: readonly string[]): Promise<string> => {
  for (const key of keys) if ((await differencesOf(id, key)).faultsAfter.length === 0) return key;
  throw new Error(`every flight of ${keys.join(', ')} would break a limit if it stayed`);
};
