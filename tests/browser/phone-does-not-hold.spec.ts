import { randomUUID } from 'node:crypto';
import type { MyDay } from '@drumline/contract';
import { beforeAll, expect, it } from 'vitest';
import { Client } from '../../apps/server/src/testing/client.js';
import { expectAccessible } from './testing/expect-accessible.js';
import { openPhoneDesk, spoken, typeOn } from './testing/phone-desk.js';
import { password } from './testing/start-office.js';

const desk = openPhoneDesk();
const { office, phoneOf, crewMember, shot } = desk;

let name: string;
beforeAll(async () => {
  const report = { place: 'XLOR', state: 'dry', at: '2027-06-14T05:58Z', by: 'strip helper' };
  expect((await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, report)).status).toBe(200);
  const { pilot } = (await desk.dispatcher.get<{ pilot: string }>('/api/flights/F05')).body;
  name = await crewMember('heavy', pilot);
});

it('a drum too heavy for its place stops Positions with the ways that hold; that it stands so is told, kept, raised, and stays on the card', async () => {
  const client = new Client(office.url);
  await client.signIn(name, password);
  const { flights } = (await client.get<MyDay>('/api/my-day')).body;
  const { drums, legs } = flights.find(({ id }) => id === 'F05')!.sheet!;
  const { loadLb, takeoffLb } = legs[0]!.totals;
  const planned = drums.find(({ position }) => position === 'R3L')!;
  const phone = await phoneOf(name);
  const { page } = phone;
  await phone.offline(true);
  await page.getByRole('link', { name: /F05/ }).click();
  await page.getByRole('link', { name: 'Loaded' }).click();
  for (const { number } of drums)
    if (number !== planned.number) await page.getByRole('button', { name: spoken(number) }).click();
  const putHeavy = async () => {
    await page.getByRole('button', { name: 'Another drum' }).click();
    await page.getByRole('button', { name: spoken(planned.number) }).click();
    await typeOn(phone, '9999');
    await page.getByRole('button', { name: 'This drum' }).click();
    await page.getByRole('button', { name: 'Keep 9999' }).click();
    await typeOn(phone, '250');
    await page.getByText(/250 kg would be 288 L of fuel, and a drum holds 216 L/).waitFor();
    await expectAccessible(page);
    await shot(phone, 'phone-overfull');
    await page.getByRole('button', { name: 'Keep 250 kg' }).click();
  };
  await putHeavy();

  await page.getByText(/This load does not hold\..*R3L: 551 lb, limit 450 lb: 101 lb over/).waitFor();
  await page.getByRole('button', { name: 'Take 9999 out' }).waitFor();
  await page.getByRole('button', { name: 'Another in R3L' }).waitFor();
  await page.getByRole('button', { name: /Positions right/ }).click({ force: true }); // it waits, and says why
  await page.getByText('This load does not hold', { exact: true }).waitFor();
  await expectAccessible(page);
  await shot(phone, 'phone-does-not-hold');
  await page.reload();
  await page.getByRole('button', { name: 'Take 9999 out' }).click();
  await page.getByText('Drums have changed places or stay behind.').waitFor();
  expect(await page.getByText(/does not hold/).count()).toBe(0);
  await page.getByRole('button', { name: 'As planned again' }).click();

  await putHeavy();
  await page.getByRole('button', { name: /It stands so in the aeroplane/ }).click();
  const moreLb = 551 - planned.lb;
  await typeOn(phone, String(loadLb + moreLb));
  await page.getByRole('button', { name: /By the aircraft/ }).click();
  await typeOn(phone, String(takeoffLb + moreLb));
  await page.getByRole('button', { name: 'Compare' }).click();
  await page.getByText(/This load does not hold\./).waitFor();
  expect(await page.getByRole('button', { name: /^Loaded/ }).count()).toBe(0);
  await expectAccessible(page);
  await shot(phone, 'phone-does-not-hold-compare');
  await page.getByRole('button', { name: 'It is loaded so: tell base' }).click();

  const onCard = page.getByText(/Loaded so, and it does not hold\..*R3L: 551 lb, limit 450 lb/);
  await onCard.waitFor();
  // The main act mends it; that it took off so is a plain one.
  expect(await page.getByRole('link', { name: 'Load it otherwise' }).getAttribute('class')).toContain('main');
  expect(await page.getByRole('button', { name: 'Took off' }).getAttribute('class')).not.toContain('main');
  await expectAccessible(page);
  await shot(phone, 'phone-loaded-so');
  await phone.offline(false);
  await page.getByRole('link', { name: '0 waiting', exact: true }).waitFor();
  const { body } = await desk.dispatcher.get<{ items: { kind: string; raised: string[] }[] }>(
    '/api/flight-reports?flight=F05',
  );
  const raised = body.items.find(({ kind }) => kind === 'load')!.raised.join(' ');
  expect(raised).toContain('F05: loaded all the same with');
  expect(raised).toContain('R3L: 551 lb, limit 450 lb: 101 lb over');
  expect((await desk.dispatcher.get<{ state: string }>('/api/flights/F05')).body.state).toBe('given');
  await page.reload();
  await onCard.waitFor();
}, 180_000);
