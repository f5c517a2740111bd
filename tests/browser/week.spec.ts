import { randomUUID } from 'node:crypto';
import type { WeekAnswer, WeekFlight } from '@drumline/contract';
import type { Locator, Page } from 'playwright-core';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { Client } from '../../apps/server/src/testing/client.js';
import { expectAccessible } from './testing/expect-accessible.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });
let dispatcher: Client;
let manager: Client;

// A plan of two seconds is enough: what is shown is asked of the server, not expected of the solver.
beforeAll(async () => {
  dispatcher = await office.api('dispatcher');
  manager = await office.api('operations manager');
  const id = randomUUID();
  await dispatcher.put(`/api/plans/${id}`, { seconds: 2, seed: 3 });
  const isSolved = async () =>
    (await dispatcher.get<{ state: string }>(`/api/plans/${id}`)).body.state === 'solved';
  await vi.waitUntil(isSolved, { timeout: 90_000, interval: 500 });
  expect((await dispatcher.post(`/api/plans/${id}/accept`, {})).status).toBe(200);
});

const week = async (): Promise<WeekAnswer> => (await dispatcher.get<WeekAnswer>('/api/week')).body;

/** The flight as it is now that the test can work on; each test takes another. */
const taken = new Set<string>();
const takeOffered = async (is: (flight: WeekFlight) => boolean = () => true): Promise<WeekFlight> => {
  const flight = (await week()).flights.find(
    (each) => each.state === 'offered' && each.kind === 'positioning' && !taken.has(each.id) && is(each),
  );
  if (flight === undefined) throw new Error('the plan offers no such flight');
  taken.add(flight.id);
  return flight;
};

const act = (who: Client, { id, revision }: WeekFlight, name: string, body: object = {}) =>
  who.post(`/api/flights/${id}/${name}`, body, { headers: { 'If-Match': `"${revision}"` } });

const openWeek = async (at?: { width: number; height: number }, flight = ''): Promise<Page> => {
  const page = await office.signIn('dispatcher', at);
  await page.goto(`/week/${flight}`);
  await page.getByRole('grid').waitFor();
  return page;
};

/** The week as it stands, its first flight on every aircraft so many times in the morning and in the afternoon of a day. */
const openCrowded = async (
  at?: { width: number; height: number },
  { perHalf = 3, days = 7 } = {},
): Promise<Page> => {
  const page = await office.signIn('dispatcher', at);
  const times = [
    ...['07:00', '08:30', '10:00'].slice(0, perHalf),
    ...['12:30', '14:00', '15:30'].slice(0, perHalf),
  ];
  await page.route('**/api/week?*', async (route) => {
    const response = await route.fetch();
    const answer = (await response.json()) as WeekAnswer;
    const [like] = answer.flights.filter(({ binding }) => binding !== null);
    const flights = answer.aircraft.flatMap(({ tail }) =>
      times.map((departs, nth) => ({
        ...like!,
        id: `${tail}-${nth}`,
        aircraft: tail,
        departs,
      })),
    );
    await route.fulfill({ response, json: { ...answer, flights } });
  });
  await page.goto(`/week?days=${days}`);
  await page.getByRole('grid').waitFor();
  return page;
};

/** Flights of the demo's reference week (product.md, section 5): day of June, aircraft, strip, drums. */
const reference: readonly (readonly [day: string, aircraft: string, place: string, drums: number])[] = [
  ['14', 'A1', 'XKNA', 4],
  ['14', 'A2', 'XLOR', 5],
  ['14', 'A2', 'XESK', 5],
  ['14', 'C1', 'XESK', 5],
  ['15', 'B1', 'XLOR', 6],
  ['15', 'A1', 'XGAN', 4],
  ['15', 'A1', 'XESK', 5],
  ['16', 'B1', 'XLOR', 6],
  ['17', 'A1', 'XISK', 4],
  ['18', 'A1', 'XFAL', 5],
  ['18', 'A1', 'XFAL', 3],
  ['19', 'A1', 'XKNA', 4],
  ['19', 'A1', 'XFAL', 5],
  ['19', 'A2', 'XISK', 4],
  ['21', 'A1', 'XISK', 4],
  ['21', 'A1', 'XKNA', 4],
];

/** The week as the reference has it, one flight of an aircraft in the morning, the other in the afternoon. */
const openReference = async (
  at: { width: number; height: number },
  days: number,
  more: Partial<WeekFlight> = {},
  states: readonly WeekFlight['state'][] = ['offered'],
): Promise<Page> => {
  const page = await office.signIn('dispatcher', at);
  await page.route('**/api/week?*', async (route) => {
    const response = await route.fetch();
    const answer = (await response.json()) as WeekAnswer;
    const [like] = answer.flights.filter(({ binding }) => binding !== null);
    const home = new Map(answer.aircraft.map((each) => [each.tail, each.home]));
    const flights = reference.map(([day, aircraft, place, drums], nth) => ({
      ...like!,
      id: `F${String(nth + 1).padStart(3, '0')}`,
      date: `2027-06-${day}`,
      aircraft,
      route: [home.get(aircraft)!, place, home.get(aircraft)!],
      drums,
      drumsPossible: drums,
      state: states[nth % states.length]!,
      ...more,
      departs: reference.slice(0, nth).some(([d, a]) => d === day && a === aircraft) ? '13:00' : '07:00',
    }));
    await route.fulfill({ response, json: { ...answer, flights } });
  });
  await page.goto(`/week?days=${days}`);
  await page.getByRole('grid').waitFor();
  return page;
};

/** In the browser: words that do not stand whole in their box, each with its box. */
const cutWords = (boxes: readonly Element[]): readonly string[] =>
  boxes.flatMap((box) => {
    const { right, bottom } = box.getBoundingClientRect();
    return [...box.querySelectorAll<HTMLElement>(':scope *:not(.unseen)')]
      .filter((part) => part.offsetParent !== null && part.getBoundingClientRect().width > 1)
      .filter((part) => {
        const place = part.getBoundingClientRect();
        const isCut = part.clientWidth > 0 && part.scrollWidth > part.clientWidth + 1;
        return place.right > right + 1 || place.bottom > bottom + 1 || isCut;
      })
      .map((part) => `${box.textContent}: ${part.textContent}`);
  });

const cardOf = (page: Page) => page.getByRole('complementary', { name: 'Decision card' });
const boxOf = (page: Page, id: string) =>
  page.getByRole('grid').getByRole('button', { name: new RegExp(`\\b${id}\\b`) });

/** The card of a flight, read to its last line that a decision needs. */
const openCard = async ({ id }: WeekFlight): Promise<Page> => {
  const page = await openWeek(undefined, id);
  await cardOf(page).getByText('If declined', { exact: true }).waitFor();
  return page;
};

const askToDecline = async (page: Page, { id }: WeekFlight): Promise<Locator> => {
  await page.keyboard.press('d');
  return page.getByRole('form', { name: `Decline ${id}` });
};

const thousands = (amount: number): string => amount.toLocaleString('en-GB');

describe('the board', () => {
  it('has every flight as a box, and the cost as a sum that adds up', async () => {
    const page = await openWeek();
    const { flights, cost } = await week();
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
    const page = await openWeek();
    await page.getByText('No flying day').first().waitFor();
    await page.getByText('Out: scheduled inspection').first().waitFor();
  });

  it('says how many drums a strip unloads of its limit', async () => {
    const page = await openWeek();
    const { landings } = await week();
    const [full] = landings.filter(({ drums, limitDrums }) => drums !== limitDrums);
    await page
      .getByRole('row', { name: /Drums landed/ })
      .getByText(`${full!.place} ${full!.drums} of ${full!.limitDrums}`)
      .first()
      .waitFor();
  });

  it.each([
    [7, { width: 1440, height: 900 }, /landing/],
    [7, { width: 1280, height: 800 }, /landing/],
    [7, { width: 1024, height: 768 }, /landing/],
    [14, { width: 1440, height: 900 }, /ldg/],
    [14, { width: 1024, height: 768 }, /ldg/],
  ])(
    'names in %i days at %o when it is off, its state and what binds, also where more drums go than may and somebody has to decide; no box cuts a word',
    async (days, at, limit) => {
      const binding = { name: 'strip landing limit', place: 'XLOR' } as const;
      const waiting = { drumsPossible: 1, binding, needsDecision: 'XLOR is soft.' };
      const page = await openReference(at, days, waiting, ['approved', 'given', 'offered', 'reported']);
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

  it('is walked with the arrows as one stop of Tab; Enter goes into the card, Esc comes back', async () => {
    const page = await openWeek();
    const { flights } = await week();
    const [first] = flights;
    await boxOf(page, first!.id).focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowLeft');
    expect(await page.locator('[role=grid] [tabindex="0"]').count()).toBe(1);
    await boxOf(page, first!.id).focus();
    await page.keyboard.press('Enter');
    await cardOf(page)
      .getByRole('heading', { level: 2, name: new RegExp(first!.id) })
      .waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('week-card');
    expect(page.url()).toContain(`/week/${first!.id}`);
    await page.keyboard.press('Escape');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-flight'))).toBe(first!.id);
  });

  it('shows other days, and two weeks at once, and keeps the picture meanwhile', async () => {
    const page = await openWeek();
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
    const page = await openWeek({ width: 1024, height: 768 });
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

  it.each([
    [7, { width: 1440, height: 900 }],
    [14, { width: 1440, height: 900 }],
    [7, { width: 1024, height: 768 }],
    [14, { width: 1024, height: 768 }],
  ])('has every aircraft of the demo and every day without scrolling, %i days at %o', async (days, at) => {
    const page = await openReference(at, days);
    const board = page.getByRole('grid');
    const { aircraft } = await week();
    expect(await board.getByRole('row').count()).toBe(1 + aircraft.length + 1);
    const hidden = await board.evaluate((element) => ({
      down: element.scrollHeight - element.clientHeight,
      across: element.scrollWidth - element.clientWidth,
      page: document.documentElement.scrollHeight - window.innerHeight,
    }));
    expect(hidden).toEqual({ down: 0, across: 0, page: 0 });
  });

  it('of three flights in every half day says of each what binds, and every landing limit at 1024', async () => {
    const page = await openCrowded({ width: 1024, height: 768 });
    const { landings, aircraft } = await week();
    expect(await page.locator('.flight-box .binds:visible').count()).toBe(6 * aircraft.length);
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

  it.each([
    [1, 7],
    [2, 7],
    [3, 7],
    [3, 14],
  ])('is printed on one landscape page, %i flights in every half day, %i days', async (perHalf, days) => {
    const page = await openCrowded(undefined, { perHalf, days });
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    expect(pdf).toMatch(/\/MediaBox \[0 0 84[12](\.\d+)? 59[45](\.\d+)?\]/);
  });
});

it('is printed in nine points and more as the demo stands', async () => {
  const page = await openWeek();
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

describe('the card', () => {
  it('is approved and given by key', async () => {
    const flight = await takeOffered();
    const page = await openWeek(undefined, flight.id);
    const card = cardOf(page);
    for (const label of [
      'For',
      'Heard',
      'Load',
      'Limits',
      'Unload or stay',
      'Crew',
      'If declined',
      'Go back if',
      'Instead',
    ])
      await card
        .getByRole('term')
        .filter({ hasText: new RegExp(`^${label}`) })
        .waitFor();
    await page.keyboard.press('a');
    await card.getByText(/Approved$/).waitFor();
    await boxOf(page, flight.id)
      .getByText(/Approved$/)
      .waitFor();
    await page.keyboard.press('g');
    await card.getByText(/Given$/).waitFor();
    await expectAccessible(page);
  });

  it('says what follows before a flight is declined, and wants a reason', async () => {
    const flight = await takeOffered();
    const { body: consequence } = await dispatcher.get<{ ifDeclined: string }>(
      `/api/flights/${flight.id}/consequence`,
    );
    const page = await openCard(flight);
    const form = await askToDecline(page, flight);
    await form.getByText(consequence.ifDeclined).waitFor();
    await form.getByText('Choose a reason first').waitFor();
    await form.getByLabel('Reason').selectOption('Weather');
    await form.getByLabel('More').fill('cloud on the pass');
    await expectAccessible(page);
    await page.keyboard.press('Enter');
    await cardOf(page).getByText(`Decline of ${flight.id} is not sent yet.`).waitFor();
    await page.getByText('1 entry waiting').waitFor();
    await expectAccessible(page);
    await cardOf(page).getByRole('button', { name: 'Send now' }).click();
    await page.getByText('No entries waiting').waitFor();
    await cardOf(page).getByText('Weather: cloud on the pass').waitFor();
    await boxOf(page, flight.id).getByText('Declined').waitFor();
  });

  it('takes a decline back until it is sent: base never hears of it', async () => {
    const flight = await takeOffered();
    const page = await openCard(flight);
    const form = await askToDecline(page, flight);
    await form.getByLabel('Reason').selectOption('No pilot');
    await form.getByRole('button', { name: `Decline ${flight.id}` }).click();
    await cardOf(page).getByText(`Decline of ${flight.id} is not sent yet.`).waitFor();
    await page.keyboard.press('Control+z');
    await cardOf(page).getByText(`Decline of ${flight.id} was taken back.`).waitFor();
    await page.getByText('No entries waiting').waitFor();
    const now = (await week()).flights.find(({ id }) => id === flight.id)!;
    expect([now.state, now.revision]).toEqual(['offered', flight.revision]);
  });

  it('sends a decline that waits when the page is left', async () => {
    const flight = await takeOffered();
    const page = await openCard(flight);
    const form = await askToDecline(page, flight);
    await form.getByLabel('Reason').selectOption('Weather');
    await form.getByRole('button', { name: `Decline ${flight.id}` }).click();
    await cardOf(page).getByText(`Decline of ${flight.id} is not sent yet.`).waitFor();
    const sent = page.waitForResponse((response) => response.url().endsWith(`/${flight.id}/decline`));
    await page.keyboard.press('Alt+3');
    expect((await sent).status()).toBe(200);
  });

  it('asked to undo an approval that base has, opens the act that takes it back', async () => {
    const flight = await takeOffered();
    const page = await openCard(flight);
    await page.keyboard.press('a');
    await cardOf(page)
      .getByText(/Approved$/)
      .waitFor();
    await page.keyboard.press('Control+z');
    await cardOf(page).getByText(`${flight.id} was approved; base has it. Let go takes it back`).waitFor();
    const form = page.getByRole('form', { name: 'Let go' });
    await form.getByLabel(new RegExp(`^${flight.id} approved`)).waitFor();
    await expectAccessible(page);
  });

  it('says what an amendment breaks while it is typed, and what does not', async () => {
    const flight = await takeOffered(({ drums, route }) => drums > 1 && route.length === 3);
    const page = await openCard(flight);
    await page.keyboard.press('m');
    const form = page.getByRole('form', { name: `Amend ${flight.id}` });
    const drums = form.getByLabel('Drums, stop 1');
    await drums.fill('9');
    await form.getByText('Breaks:').first().waitFor();
    await form.getByText('It would break a limit: see above.').waitFor();
    await drums.fill(String(flight.drums - 1));
    await form.getByText('Nothing breaks.').waitFor();
    await expectAccessible(page);
    await drums.press('Enter');
    await boxOf(page, flight.id)
      .getByText(`${flight.drums - 1} of`)
      .waitFor();
  });

  it('is held in place, and free to move again', async () => {
    const flight = await takeOffered();
    const page = await openCard(flight);
    await page.keyboard.press('h');
    await cardOf(page).getByText('Held in place', { exact: true }).waitFor();
    await cardOf(page).getByRole('button', { name: 'Free to move' }).click();
    await cardOf(page).getByRole('button', { name: 'Hold in place' }).waitFor();
  });

  it('lets several flights go in one named action', async () => {
    const flights = [await takeOffered(), await takeOffered()];
    for (const flight of flights) expect((await act(manager, flight, 'approve')).status).toBe(200);
    const page = await openWeek(undefined, flights[0]!.id);
    await cardOf(page)
      .getByText(/Approved$/)
      .waitFor();
    await page.keyboard.press('l');
    const form = page.getByRole('form', { name: 'Let go' });
    await form.getByText('In the name of Demo dispatcher.').waitFor();
    await form.getByLabel(new RegExp(`^${flights[1]!.id} approved`)).check();
    await form.getByLabel('Why').fill('XLOR is soft');
    await form.getByRole('button', { name: 'Let go 2 flights' }).click();
    for (const { id } of flights) await boxOf(page, id).getByText('Offered').waitFor();
  });

  it('tells who was quicker, and that nothing was sent', async () => {
    const flight = await takeOffered();
    const page = await openCard(flight);
    const form = await askToDecline(page, flight);
    await form.getByLabel('Reason').selectOption('Weather');
    // The page does not hear of it in the meantime.
    await page.route('**/api/changes', (route) => route.fulfill({ status: 304 }));
    expect((await act(manager, flight, 'approve')).status).toBe(200);
    await page.route('**/decline', async (route) => {
      await page.unroute('**/api/changes');
      await route.continue();
    });
    await form.getByRole('button', { name: `Decline ${flight.id}` }).click();
    await cardOf(page).getByRole('button', { name: 'Send now' }).click();
    const alert = cardOf(page).getByRole('alert');
    await alert.waitFor();
    await alert.getByText(`${flight.id} was approved by Demo operations manager at`).waitFor();
    await alert.getByText('Your Decline was not sent.').waitFor();
    await form.waitFor({ state: 'detached' });
    await cardOf(page).getByRole('button', { name: 'Seen' }).click();
    await alert.waitFor({ state: 'detached' });
  });

  it('whose form was open while another decided says who did, and keeps what was typed', async () => {
    const flight = await takeOffered();
    const page = await openCard(flight);
    const form = await askToDecline(page, flight);
    await form.getByLabel('Reason').selectOption('Weather');
    await form.getByLabel('More').fill('cloud on the pass');
    expect((await act(manager, flight, 'approve')).status).toBe(200);
    await cardOf(page).getByText(`${flight.id} was approved by Demo operations manager at`).waitFor();
    await cardOf(page).getByText('Your Decline was not sent.').waitFor();
    expect(await form.getByLabel('More').inputValue()).toBe('cloud on the pass');
    await page.keyboard.press('Enter');
    expect(await form.getByLabel('More').inputValue()).toBe('cloud on the pass');
    await form.getByRole('button', { name: 'Leave it' }).click();
    await cardOf(page).getByRole('button', { name: 'Let go' }).waitFor();
  });

  it('of a strip that went soft says so, with the drums that may still go', async () => {
    const { flights, aircraft } = await week();
    const typeOf = (tail: string) => aircraft.find((each) => each.tail === tail)?.type;
    const flight = flights.find(
      ({ route, aircraft: tail, drums, state }) =>
        state !== 'declined' &&
        route.includes('XLOR') &&
        typeOf(tail) === 'A' &&
        drums === 5 &&
        route.length === 3,
    );
    if (flight === undefined) throw new Error('the plan flies no five drums to XLOR with type A');
    await dispatcher.put(`/api/surface-reports/${randomUUID()}`, {
      place: 'XLOR',
      state: 'soft',
      at: '2027-06-14T06:00Z',
      by: 'strip helper',
      untilDate: '2027-06-20',
    });
    const page = await openWeek(undefined, flight.id);
    const card = cardOf(page);
    await card.getByText('XLOR landing, soft: binds').waitFor();
    // 5 drums of type A: 6,764 lb at 180 kg a drum, 314 lb over the soft landing limit of 6,450 lb, so 4 go (the payload check of the demo).
    await card.getByText('314 lb over').waitFor();
    await card.getByRole('button', { name: 'Amend to 4 drums' }).click();
    await boxOf(page, flight.id).getByText('4 of').waitFor();
    await page.getByText('Changed since the plan').waitFor();
  });
});

it('who only looks on sees the card without its acts', async () => {
  const page = await office.signIn('storekeeper');
  await page.goto('/week');
  await cardOf(page).getByText('If declined', { exact: true }).waitFor();
  expect(await cardOf(page).getByRole('button').count()).toBe(0);
});
