import { randomUUID } from 'node:crypto';
import type { LoadAnswer, MyDay } from '@drumline/contract';
import { printedLbOf, readSquareCode } from '@drumline/loading';
import { kilograms } from '@drumline/units';
import { beforeAll, describe, expect, it } from 'vitest';
import { Client } from '../../apps/server/src/testing/client.js';
import { expectAccessible } from './testing/expect-accessible.js';
import type { Phone } from './testing/phone.js';
import { openPhoneDesk, spoken, typeOn } from './testing/phone-desk.js';
import { readSquare } from './testing/read-square.js';
import { password } from './testing/start-office.js';

const desk = openPhoneDesk();
const { office, phoneOf, crewMember, shot } = desk;

beforeAll(async () => {
  for (const place of ['XGAN', 'XLOR']) {
    const report = { place, state: 'dry', at: '2027-06-14T05:58Z', by: 'strip helper' };
    expect((await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, report)).status).toBe(200);
  }
});

const dayOf = async (name: string): Promise<MyDay> => {
  const client = new Client(office.url);
  await client.signIn(name, password);
  return (await client.get<MyDay>('/api/my-day')).body;
};

const flightOf = ({ flights }: MyDay, id: string) => flights.find((flight) => flight.id === id)!;

describe('the code square of a flight', () => {
  it('is read off the phone by day and by night with the line cut, and holds what the printed sheet holds', async () => {
    const { sheet } = flightOf(await dayOf('pilot'), 'F06');
    const phone = await phoneOf('pilot');
    const { page } = phone;
    await phone.offline(true);
    await phone.restart();
    await phone.page.getByRole('link', { name: /F06/ }).click();
    await phone.page.getByRole('link', { name: 'Show as a code square' }).click();
    await phone.page.getByRole('img', { name: 'Code square of F06' }).waitFor();
    await phone.page.getByText(`F06 version 2 · check code ${sheet!.checkCode}`).waitFor();
    await expectAccessible(phone.page);
    await shot(phone, 'phone-square');
    for (const ground of ['light', 'dim']) {
      await phone.page.evaluate((to) => (document.documentElement.dataset.ground = to), ground);
      const read = await readSquare(phone.page);
      expect(read).toBe(sheet!.square);
      expect(readSquareCode(read!)).toEqual({ ok: true, checkCode: sheet!.checkCode });
    }
    expect(page).not.toBe(phone.page);
  }, 120_000);

  it('is offered where the browser does not promise to keep what is on the phone', async () => {
    const phone = await phoneOf('pilot', { storage: 'refused' });
    const { page } = phone;
    await phone.offline(true);
    await page.getByRole('link', { name: 'What to do before you leave' }).click();
    await page.getByText('Not safe alone.').waitFor();
    await expectAccessible(page);
    await shot(phone, 'phone-storage');
    await page.getByRole('link', { name: /Show F06 as a code square/ }).click();
    await page.getByRole('img', { name: 'Code square of F06' }).waitFor();
  }, 120_000);
});

/** In the place of 0572 stands 0573; the others are read as planned. */
const loadWithAnother = async (phone: Phone): Promise<void> => {
  const { page } = phone;
  await page.getByRole('link', { name: /F06/ }).click();
  await page.getByRole('link', { name: 'Loaded' }).click();
  for (const number of ['0574', '0575', '0578'])
    await page.getByRole('button', { name: spoken(number) }).click();
  await page.getByText('1 not read yet: 0572').waitFor();
  await page.getByRole('button', { name: 'Another drum' }).click();
  await page.getByRole('heading', { name: 'Which place has another?' }).waitFor();
  await page.getByRole('button', { name: spoken('0572') }).click();
  await typeOn(phone, '0573');
  await page.getByRole('button', { name: 'This drum' }).click();
  await page.getByText('0573 is not on your load. Keep anyway?').waitFor();
  await page.getByText('The book has it at XMER.').waitFor();
  await expectAccessible(page);
  await shot(phone, 'phone-another');
  await page.getByRole('button', { name: 'Keep 0573' }).click();
  await page.getByText(/0573 for 0572 in R\d[LR]/).waitFor();
};

describe('another drum than planned, with the line cut', () => {
  it('is always kept; both totals and the position follow, and a difference takes two people', async () => {
    const before = await dayOf('pilot');
    const planned = flightOf(before, 'F06').sheet!;
    const position = planned.drums.find(({ number }) => number === '0572')!.position;
    const lbOf = (number: string) =>
      printedLbOf(kilograms(before.drums.find((drum) => drum.number === number)!.kg));
    const changeLb = lbOf('0573') - lbOf('0572');
    expect(changeLb).not.toBe(0);
    const { totals } = planned.legs[0]!;
    const [loadLb, takeoffLb] = [totals.loadLb + changeLb, totals.takeoffLb + changeLb];

    const phone = await phoneOf('pilot');
    const { page } = phone;
    await phone.offline(true);
    await loadWithAnother(phone);
    await expectAccessible(page);
    await shot(phone, 'phone-positions-another');
    // A restart in the middle loses nothing of it.
    await page.reload();
    await page.getByRole('button', { name: spoken('0573') }).waitFor();
    await page.getByRole('button', { name: /Positions right/ }).click();
    await typeOn(phone, String(loadLb));
    await page.getByRole('button', { name: /By the aircraft/ }).click();
    await typeOn(phone, String(takeoffLb + 25));
    await page.getByRole('button', { name: 'Compare' }).click();
    await page.getByRole('heading', { name: '25 lb apart' }).waitFor();
    await shot(phone, 'phone-compare-another');

    await page.getByRole('button', { name: 'How they add' }).click();
    await page.getByRole('table', { name: 'Load' }).getByText(`0573 in ${position}`).waitFor();
    const [more, less] = [takeoffLb + 25, takeoffLb].map((lb) => lb.toLocaleString('en-GB'));
    await page.getByText(`${more} − ${less} = 25 lb.`).waitFor();
    await expectAccessible(page);
    await shot(phone, 'phone-adding');
    await page.getByRole('button', { name: 'Back to compare' }).click();

    await page.getByRole('button', { name: 'Sign for it' }).click();
    const sign = page.getByRole('button', { name: /Loaded, signed/ });
    await page.getByText('The reason first').waitFor();
    await page.getByLabel('Why Demo pilot accepts it').fill('scale is out');
    await page.getByLabel('Second person, full name').fill('demo pilot');
    await page.getByText('Somebody else than yourself').waitFor();
    await sign.click({ force: true }); // it waits, and says why
    await page.getByLabel('Second person, full name').fill('S. Keeper');
    await expectAccessible(page);
    await shot(phone, 'phone-sign');
    await sign.click();
    await page.getByRole('button', { name: 'Took off' }).waitFor();
    await page.getByText('4 drums', { exact: true }).waitFor();
    expect(await page.getByText('0573', { exact: true }).count()).toBe(1);
    expect(await page.getByText('0572', { exact: true }).count()).toBe(0);
    // Before base has heard, and after, it is no news to this phone.
    expect(await page.getByText(/has come in/).count()).toBe(0);
    await page.getByRole('link', { name: 'Show as a code square' }).click();
    await page.getByRole('img', { name: 'Code square of F06' }).waitFor();
    const square = (await readSquare(page))!;
    expect(square).toMatch(/^R\d[LR] 0573 /m);
    await phone.offline(false);
    await page.getByRole('link', { name: '0 waiting', exact: true }).waitFor();

    interface Flight {
      readonly state: string;
      readonly loads: readonly { readonly drum: string }[];
    }
    const at = async () => (await desk.dispatcher.get<Flight>('/api/flights/F06')).body;
    await expect.poll(async () => (await at()).state).toBe('loaded');
    expect((await at()).loads.map(({ drum }) => drum).sort()).toEqual(['0573', '0574', '0575', '0578']);
    const { sheet } = flightOf(await dayOf('pilot'), 'F06');
    expect(sheet!.drums.find(({ number }) => number === '0573')!.position).toBe(position);
    expect(sheet!.legs[0]!.totals).toMatchObject({ loadLb, takeoffLb });
    expect(readSquareCode(square)).toEqual({ ok: true, checkCode: sheet!.checkCode });
    const { body: reports } = await desk.dispatcher.get<{ items: { kind: string; raised: string[] }[] }>(
      '/api/flight-reports?flight=F06',
    );
    expect(reports.items.find(({ kind }) => kind === 'load')!.raised.join()).toContain(
      'Signed by Demo pilot with S. Keeper: scale is out. Typed:',
    );

    await page.getByRole('link', { name: 'Back to the leg' }).click();
    await page.getByRole('button', { name: 'Took off' }).waitFor();
    expect(await page.getByText(/has come in/).count()).toBe(0);
    await page.getByRole('link', { name: 'Left here' }).click();
    await page.getByRole('button', { name: spoken('0573') }).waitFor();
  }, 180_000);

  it('may be in no book: it is kept with what it weighs; two drums may change places', async () => {
    const { pilot } = (await desk.dispatcher.get<{ pilot: string }>('/api/flights/F05')).body;
    const name = await crewMember('swapper', pilot);
    const planned = flightOf(await dayOf(name), 'F05').sheet!;
    const standing = new Map(planned.drums.map(({ number, position }) => [number, position]));
    const [first, second] = [standing.get('0447')!, standing.get('0452')!];
    const inPlace = (position: string, number: string) =>
      page.getByRole('button', { name: new RegExp(`${position}.*${spoken(number).source}`) });
    const phone = await phoneOf(name);
    const { page } = phone;
    await phone.offline(true);
    await page.getByRole('link', { name: /F05/ }).click();
    await page.getByRole('link', { name: 'Loaded' }).click();
    await page.getByRole('button', { name: 'Another drum' }).click();
    await page.getByRole('button', { name: spoken('0447') }).click();
    await typeOn(phone, '0913');
    await page.getByRole('button', { name: 'This drum' }).click();
    await page.getByText('No drum 0913 with fuel in the book.').waitFor();
    await page.getByRole('button', { name: 'Keep 0913' }).click();
    await page.getByRole('heading', { name: 'What does it weigh?' }).waitFor();
    await page.getByText('From the tag or a scale').waitFor();
    await typeOn(phone, '80');
    await page.getByText(/80 in a kg field is light for 1 drum/).waitFor();
    await shot(phone, 'phone-weighs');
    await page.getByRole('button', { name: 'Clear' }).click();
    await typeOn(phone, '180');
    await page.getByRole('button', { name: 'Keep 180 kg' }).click();
    await inPlace(first, '0913').getByText('180.0 kg · 397 lb').waitFor();
    await page.getByRole('button', { name: 'Swap two' }).click();
    await page.getByRole('button', { name: spoken('0913') }).click();
    await page.getByRole('button', { name: spoken('0452') }).click();
    await inPlace(first, '0452').waitFor();
    await inPlace(second, '0913').waitFor();
    await page.getByRole('button', { name: 'As planned again' }).click();
    await inPlace(first, '0447').waitFor();

    // Loaded with it: both totals have its weight, and base is told what only this phone knows.
    await page.getByRole('button', { name: 'Another drum' }).click();
    await page.getByRole('button', { name: spoken('0447') }).click();
    await typeOn(phone, '0913');
    await page.getByRole('button', { name: 'This drum' }).click();
    await page.getByRole('button', { name: 'Keep 0913' }).click();
    await typeOn(phone, '190');
    await page.getByText('The drum taken at 20.0 kg, that is 213 L of fuel.').waitFor();
    await page.getByRole('button', { name: 'Keep 190 kg' }).click();
    await inPlace(first, '0913').getByText('190.0 kg · 419 lb').waitFor();
    await shot(phone, 'phone-positions-unknown');
    for (const number of ['0448', '0449', '0450', '0451', '0452'])
      await page.getByRole('button', { name: spoken(number) }).click();
    await page.getByRole('button', { name: /Positions right/ }).click();
    const moreLb = 419 - planned.drums.find(({ number }) => number === '0447')!.lb;
    const { loadLb, takeoffLb } = planned.legs[0]!.totals;
    await typeOn(phone, String(loadLb + moreLb));
    await page.getByRole('button', { name: /By the aircraft/ }).click();
    await typeOn(phone, String(takeoffLb + moreLb));
    await page.getByRole('button', { name: 'Compare' }).click();
    await page.getByRole('heading', { name: 'They agree' }).waitFor();
    await shot(phone, 'phone-agree-unknown');
    await page.getByRole('button', { name: /^Loaded/ }).click();
    await page.getByRole('button', { name: 'Took off' }).waitFor();
    await phone.offline(false);
    await page.getByRole('link', { name: '0 waiting', exact: true }).waitFor();
    const { body } = await desk.dispatcher.get<{ items: { kind: string }[] }>(
      '/api/flight-reports?flight=F05',
    );
    const load = body.items.find(({ kind }) => kind === 'load');
    expect(JSON.stringify(load)).toContain('"grossKg":190');
    // Base's sheet of it is the same as this phone's: no other version has come in.
    const { load: atBase } = (await desk.dispatcher.get<LoadAnswer>('/api/flights/F05/sheet')).body;
    expect(atBase!.sheet.notInBookWords).toBe('0913 is not in the book: 190.0 kg by the crew.');
    await page.reload();
    await page.getByText('6 drums', { exact: true }).waitFor();
    await page.getByText('0913', { exact: true }).first().waitFor();
    expect(await page.getByText(/has come in/).count()).toBe(0);
  }, 180_000);
});
