import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { Client } from '../../apps/server/src/testing/client.js';
import { expectAccessible } from './testing/expect-accessible.js';
import type { Phone } from './testing/phone.js';
import { type Drum, openPhoneDesk, spoken, typeOn } from './testing/phone-desk.js';
import { expectFits } from './testing/phone-fit.js';
import { password } from './testing/start-office.js';

const desk = openPhoneDesk();
const { office, phoneOf, newPhone, crewMember, movementsOf, shot } = desk;

describe('the phone', () => {
  it('comes with under 250 kB, and opens afterwards without a line', async () => {
    const phone = await newPhone();
    const sizes: Promise<number>[] = [];
    const asked: string[] = [];
    phone.page.on('response', (answer) => {
      asked.push(new URL(answer.url()).pathname);
      sizes.push(
        answer.body().then(
          (body) => gzipSync(body).length,
          () => 0,
        ),
      );
    });
    await phone.signIn('pilot');
    // The figures of a leg have a face of their own.
    await phone.page.getByRole('link', { name: /F06/ }).click();
    await expect
      .poll(() => asked.filter((path) => path.endsWith('.woff2')).length, { timeout: 10_000 })
      .toBe(2);
    const total = (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0);
    expect(total).toBeGreaterThan(50_000);
    expect(total).toBeLessThan(250_000);
    await phone.offline(true);
    await phone.restart();
    await phone.page.getByText(/F06/).first().waitFor();
    await phone.page.getByText(/Not with base/).waitFor();
  });

  it('shows the essentials of a leg without scrolling, with every figure of T7', async () => {
    const phone = await phoneOf('pilot');
    const { page } = phone;
    await page.getByRole('link', { name: /F06/ }).click();
    // The report of XGAN is two days old: soft counts, and the dry figure stands below it.
    await page.getByText('Stay: 361 lb too heavy, soft').waitFor();
    await page.getByText('6,261 lb, take-off limit 5,900 lb soft').waitFor();
    await page.getByText('If dry: 11 lb over').waitFor();
    await page.getByText('Tailwind more than 3 kt', { exact: true }).waitFor();
    await page.getByText('Decide by 1.1 NM final, at the stream fork', { exact: true }).waitFor();
    await page.getByText('XGAN landing, soft', { exact: true }).waitFor();
    const fuel = (await page.getByText('Fuel', { exact: true }).boundingBox())!;
    const acts = (await page.getByRole('navigation', { name: 'Actions' }).boundingBox())!;
    expect(fuel.y + fuel.height).toBeLessThan(acts.y);
    for (const name of ['Left here', 'Bring back', 'Problem', 'Surface', 'Next leg', /^F06 · /])
      expect((await page.getByRole('link', { name }).boundingBox())!.height).toBeGreaterThanOrEqual(48);
    await expectAccessible(page);
    await shot(phone, 'phone-leg');
  });
});

/** Left here, all of them; the last one is brought back, its seal broken. */
const threeLeftOneBack = async (phone: Phone): Promise<void> => {
  const { page } = phone;
  await page.getByRole('link', { name: /F06/ }).click();
  await page.getByRole('link', { name: 'Left here' }).click();
  await page.getByRole('button', { name: 'All 4, good' }).click();
  await page.getByRole('button', { name: /drum 0 5 7 8/ }).click();
  await page.getByText('Bring back', { exact: true }).click();
  await page.getByText('Seal broken', { exact: true }).click();
  await page.getByText('0578 goes on hold on this phone at Keep.').waitFor();
  await shot(phone, 'phone-condition');
  await page.getByRole('button', { name: 'Next drum' }).click();
};

describe('offline at the strip (T2)', () => {
  it('3 left and 1 brought back are kept over reload and restart, counted once with a second phone, written and received', async () => {
    const phone = await phoneOf('pilot');
    const second = await phoneOf(await crewMember('second'));
    await phone.offline(true);
    await threeLeftOneBack(phone);
    // What is begun is there after a reload.
    await phone.page.reload();
    await phone.page.getByRole('heading', { name: 'Left at XGAN' }).waitFor();
    await expectAccessible(phone.page);
    await shot(phone, 'phone-left');
    await phone.page.getByRole('button', { name: /Keep.*3 left at XGAN, 1 brought back/ }).click();
    await phone.page.getByText('3 left, 1 brought back, by this phone').waitFor();
    // What is told after the report is of the one drum that is still aboard.
    const still = phone.page.locator('dl.facts').first();
    await still.getByText('1 drum', { exact: true }).waitFor();
    await still.getByText(/^May leave loaded: .* spare/).waitFor();
    await phone.page.getByRole('heading', { name: 'As planned, before the report' }).waitFor();
    await expectAccessible(phone.page);
    await shot(phone, 'phone-after-report');
    // Before it was told as loaded or off: nobody is asked to load any more.
    expect(await phone.page.getByRole('link', { name: 'Loaded', exact: true }).count()).toBe(0);
    // The drum that rides home is aboard on the way home: dangerous goods, tie-down and balance are of it.
    await phone.page
      .getByRole('navigation', { name: 'Actions' })
      .getByRole('link', { name: 'Next leg' })
      .click();
    await phone.page.getByText('If XMER closes', { exact: true }).waitFor();
    await shot(phone, 'phone-home-held');
    await phone.page.getByRole('heading', { name: 'Dangerous goods aboard' }).waitFor({ timeout: 8000 });
    await phone.page.getByRole('heading', { name: 'Tie-down' }).waitFor();
    await phone.page.getByRole('link', { name: /^F06 · / }).click();
    await phone.page.getByText('3 left, 1 brought back, by this phone').waitFor();
    expect(await phone.page.getByText(/F06.*Stay:/).count()).toBe(0);
    await shot(phone, 'phone-day-after-report');
    await phone.restart();
    await phone.page.getByRole('link', { name: '1 waiting', exact: true }).click();
    await phone.page.getByText('Kept on this phone').waitFor();
    await expectAccessible(phone.page);
    await shot(phone, 'phone-outbox');
    await phone.page.getByRole('link', { name: 'As a text message' }).click();
    const text = await phone.page.locator('.as-text').textContent();
    expect(text).toMatch(/^F06\/1 XGAN \d{4}-\d\d-\d\d \d{4} LEFT 0572 0574 0575 BACK 0578 SEAL BY \S+$/);
    await expectAccessible(phone.page);
    await shot(phone, 'phone-as-text');

    await second.offline(true);
    await threeLeftOneBack(second);
    await second.page.getByRole('button', { name: /^Keep/ }).click();
    await second.page.getByText('3 left, 1 brought back, by this phone').waitFor();
    expect(await movementsOf('0572')).not.toContainEqual(expect.objectContaining({ kind: 'left at' }));

    for (const each of [phone, second]) {
      await each.offline(false);
      await each.page.getByRole('link', { name: '0 waiting', exact: true }).click();
      await each.page
        .getByText(/With base \d\d:\d\d/)
        .last()
        .waitFor();
    }
    for (const number of ['0572', '0574', '0575', '0578']) {
      const isBack = number === '0578';
      const { body } = await desk.dispatcher.get<Drum>(`/api/drums/${number}`);
      // Nobody has said yet that F06 is down: what comes home is aboard until then.
      expect(body.where).toMatchObject(
        isBack ? { kind: 'aboard', flight: 'F06' } : { kind: 'at', place: 'XGAN' },
      );
      expect((body.held ?? null) !== null).toBe(isBack);
      const reports = (await movementsOf(number)).filter(({ kind }) => /left at|brought home/.test(kind));
      expect(reports.map(({ kind }) => kind)).toEqual(Array(2).fill(isBack ? 'brought home' : 'left at'));
      expect(new Set(reports.map(({ by }) => by))).toEqual(new Set(['Demo pilot', 'Crew second']));
      for (const { writtenAt, receivedAt } of reports)
        expect(Date.parse(receivedAt)).toBeGreaterThanOrEqual(Date.parse(writtenAt));
    }
    const gan = (await desk.dispatcher.get<{ drums: { place: string; number: string }[] }>('/api/scenario'))
      .body.drums;
    expect(
      gan.filter(({ place, number }) => place === 'XGAN' && ['0572', '0574', '0575'].includes(number)),
    ).toHaveLength(3);
  }, 180_000);
});

const keepSurface = async ({ page }: Phone, code: string, word: string): Promise<void> => {
  await page.evaluate((to) => (window.location.hash = `#/surface/${to}`), code);
  await page.getByRole('heading', { name: `Surface at ${code}, now` }).waitFor();
  await page
    .getByText(new RegExp(`^${word}`))
    .first()
    .click();
  await page.getByRole('button', { name: /Keep/ }).click();
  await page.getByRole('heading', { name: 'What I reported' }).waitFor();
};

const surfaceIds = async (): Promise<readonly string[]> => {
  const ids: string[] = [];
  for (let after: string | null = ''; after !== null; ) {
    const { body }: { body: { items: { id: string }[]; next: string | null } } = await desk.dispatcher.get(
      `/api/surface-reports?limit=500${after === '' ? '' : `&after=${after}`}`,
    );
    ids.push(...body.items.map(({ id }) => id));
    after = body.next;
  }
  return ids;
};

describe('a full outbox', () => {
  it('of 200 reports arrives once each, through a server that answers 500, is down, and loses its answers', async () => {
    const phone = await phoneOf('pilot');
    const { page } = phone;
    const before = await surfaceIds();
    await phone.offline(true);
    for (let count = 0; count < 200; count += 1)
      await keepSurface(phone, 'XGAN', count % 2 === 0 ? 'Dry' : 'Damp');
    await page.getByRole('link', { name: '200 waiting', exact: true }).waitFor();
    desk.line.mood = 'answers 500';
    desk.line.writes = 0;
    await phone.offline(false);
    await expect.poll(() => desk.line.writes, { timeout: 30_000 }).toBeGreaterThan(0);
    await page.getByRole('link', { name: '200 waiting', exact: true }).waitFor();
    desk.line.mood = 'answer lost';
    await page.getByRole('button', { name: 'Try now' }).click();
    await expect
      .poll(async () => (await surfaceIds()).length, { timeout: 30_000 })
      .toBeGreaterThan(before.length);
    desk.line.mood = 'through';
    await page.getByRole('link', { name: /^1?[0-9]?[0-9] waiting/ }).waitFor({ timeout: 60_000 });
    desk.line.mood = 'down';
    await phone.restart();
    desk.line.mood = 'through';
    await phone.page.getByRole('link', { name: '0 waiting', exact: true }).waitFor({ timeout: 120_000 });
    const arrived = (await surfaceIds()).filter((id) => !before.includes(id));
    expect(arrived).toHaveLength(200);
    expect(new Set(arrived).size).toBe(200);
  }, 400_000);
});

describe('signing out', () => {
  it('is refused while a report waits; a session that ends loses none, and keeps its author', async () => {
    const name = await crewMember('third');
    const phone = await phoneOf(name);
    await phone.offline(true);
    await keepSurface(phone, 'XGAN', 'Dry');
    await phone.page.goto('/phone/#/you');
    await phone.page.getByRole('button', { name: 'Sign out' }).click();
    await phone.page.getByText('1 entry is only on this phone. Send or show them first.').waitFor();
    const same = new Client(office.url);
    await same.signIn(name, password);
    const sessions = await same.get<{ items: { id: string; thisOne: boolean }[] }>('/api/me/sessions');
    for (const { id, thisOne } of sessions.body.items)
      if (!thisOne) await same.delete(`/api/me/sessions/${id}`);
    await phone.offline(false);
    await phone.page.getByText('Base does not know this phone any more.').waitFor();
    await phone.page.getByRole('link', { name: '1 waiting', exact: true }).waitFor();
    await expectAccessible(phone.page);
    // Somebody else signs in on the phone.
    await phone.page.getByLabel('Name').fill('pilot');
    await phone.page.getByLabel('Password').fill(password);
    await phone.page.getByRole('button', { name: 'Sign in' }).click();
    await phone.page.getByRole('link', { name: '0 waiting', exact: true }).waitFor();
    const { body } = await desk.dispatcher.get<{ items: { data?: { by: string }; by?: string }[] }>(
      '/api/surface-reports?limit=500',
    );
    expect(JSON.stringify(body)).toContain('Crew third');
    await phone.page.getByRole('button', { name: 'Sign out' }).click();
    await phone.page.getByRole('heading', { name: 'Drumline phone' }).waitFor();
  }, 120_000);
});

describe('a phone whose clock is 3 h off', () => {
  it('says so, and reports by base’s time with its own beside it', async () => {
    const phone = await phoneOf('pilot', { clockOffHours: 3 });
    const { page } = phone;
    await page.getByText("This phone's clock is 3 h 00 fast. Base's time is used.").waitFor();
    await phone.offline(true);
    await page.getByRole('link', { name: /F06/ }).click();
    await page.getByRole('link', { name: 'Left here' }).click();
    await page.getByRole('button', { name: 'Another drum' }).click();
    await typeOn(phone, '0436');
    await page.getByRole('button', { name: 'This drum' }).click();
    await page.getByText('0436 is not on your load. Keep anyway?').waitFor();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Keep 0436' }).click();
    // Somewhere else: the tapped drum goes along.
    await page.getByRole('link', { name: /Somewhere else than XGAN/ }).click();
    await page.getByRole('button', { name: /XCIN/ }).click();
    await page.getByText('1 left at XCIN', { exact: true }).waitFor();
    await page.getByRole('button', { name: /^Keep/ }).click();
    await page.getByText('1 left, 0 brought back, by this phone. Left at XCIN: 0436').waitFor();
    await page.getByText('Not figured for XCIN').waitFor();
    await phone.offline(false);
    await page.getByRole('link', { name: '0 waiting', exact: true }).waitFor();
    const report = (await movementsOf('0436')).find(({ kind }) => kind === 'left at')!;
    expect(Math.abs(Date.parse(report.writtenAt) - Date.parse(report.receivedAt))).toBeLessThan(5 * 60_000);
    expect(report).toMatchObject({ note: expect.stringContaining('off by -180 min') });
  }, 120_000);
});

describe('two totals on the phone (T3)', () => {
  it('8,528 agrees; 8,258 is 270 lb apart, Loaded waits, and nothing says which is right', async () => {
    const { pilot } = (await desk.dispatcher.get<{ pilot: string }>('/api/flights/F05')).body;
    const phone = await phoneOf(await crewMember('loader', pilot));
    const { page } = phone;
    await page.getByRole('link', { name: /F05/ }).click();
    await phone.offline(true);
    await page.getByRole('link', { name: 'Loaded' }).click();
    expect(await page.getByText('2,378').count()).toBe(0);
    for (const number of ['0447', '0448', '0449', '0450', '0451', '0452'])
      await page.getByRole('button', { name: spoken(number) }).click();
    await expectAccessible(page);
    await shot(phone, 'phone-positions');
    await page.getByRole('button', { name: /Positions right/ }).click();
    await typeOn(phone, '2378');
    await page.getByRole('button', { name: /By the aircraft/ }).click();
    await typeOn(phone, '8258');
    await shot(phone, 'phone-totals');
    await page.getByRole('button', { name: 'Compare' }).click();
    await page.getByRole('heading', { name: '270 lb apart' }).waitFor();
    await page.getByText('Loaded waits.').waitFor();
    await page.getByText(/with 5 and 2 changed over/).waitFor();
    await expectAccessible(page);
    await shot(phone, 'phone-differs');
    await page.reload();
    await page.getByRole('button', { name: 'Type again' }).click();
    await page.getByRole('button', { name: 'Clear' }).click();
    await typeOn(phone, '8528');
    // A slip within the tolerance is named too, and can be put right.
    const typeByHand = async (figure: string) => {
      await page.getByRole('button', { name: /By hand/ }).click();
      await page.getByRole('button', { name: 'Clear' }).click();
      await typeOn(phone, figure);
      await page.getByRole('button', { name: 'Compare' }).click();
    };
    await typeByHand('2387');
    await page.getByRole('heading', { name: '9 lb apart' }).waitFor();
    await page.getByText('Within the tolerance. A slip may still be in it: look again.').waitFor();
    await page.getByText(/with 7 and 8 changed over/).waitFor();
    expect(await page.getByText(/rounding/i).count()).toBe(0);
    await expectFits(page, 'within the tolerance');
    await shot(phone, 'phone-within-tolerance');
    await page.getByRole('button', { name: 'Type again' }).click();
    await typeByHand('2378');
    await page.getByRole('heading', { name: 'They agree' }).waitFor();
    await page.getByText(/1,078.2 kg is 2,377 lb, row by row 2,378 lb: 1 lb is rounding/).waitFor();
    await page.getByRole('button', { name: /Loaded/ }).click();
    await page.getByRole('link', { name: '1 waiting', exact: true }).waitFor();
    await phone.offline(false);
    await page.getByRole('link', { name: '0 waiting', exact: true }).waitFor();
    await expect
      .poll(async () => (await desk.dispatcher.get<{ state: string }>('/api/flights/F05')).body.state)
      .toBe('loaded');
  }, 120_000);
});

describe('a newer version of a load', () => {
  it('is announced, and stays away until the pilot opens it', async () => {
    const phone = await phoneOf('pilot');
    const { page } = phone;
    await page.getByRole('link', { name: /F06/ }).click();
    await page
      .getByText(/version 2/)
      .first()
      .waitFor();
    const { revision } = (await desk.dispatcher.get<{ revision: number }>('/api/flights/F06')).body;
    const amended = await desk.dispatcher.post(
      '/api/flights/F06/amend',
      { stops: [{ place: 'XGAN', drums: 3 }] },
      { headers: { 'If-Match': `"${revision}"` } },
    );
    expect([amended.status, amended.body]).toEqual([200, expect.anything()]);
    await page.reload();
    await page
      .getByText(/has come in|Not yours any more/)
      .first()
      .waitFor();
    await page.getByText('4 drums', { exact: true }).waitFor();
    await expectAccessible(page);
    await shot(phone, 'phone-newer');
    await page.getByRole('link', { name: 'See what differs' }).click();
    await page.getByRole('row', { name: /^Drums 4 3$/ }).waitFor();
    await page.getByText(/^F06 was amended \d\d:\d\d by /).waitFor();
    for (const width of [320, 360]) {
      await page.setViewportSize({ width, height: 740 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
    await shot(phone, 'phone-newer-differs');
  }, 120_000);
});
