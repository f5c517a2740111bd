import { randomUUID } from 'node:crypto';
import type { Page } from 'playwright-core';
import { beforeAll, expect, it } from 'vitest';
import type { Client } from '../../apps/server/src/testing/client.js';
import { expectAccessible } from './testing/expect-accessible.js';
import { flownMonday } from './testing/flown-monday.js';
import { openOffice } from './testing/open-office.js';

// product.md, T10: day 2, 17:00 the day pack is printed, then no power and no link until day 3, 14:00. F07 and F08 are flown on
// paper, three uplifts come by radio. Beside it the same day at a desk that had power, to compare with.
const dark = openOffice({ own: true });
const lit = openOffice({ own: true });
type Desk = Awaited<ReturnType<typeof openDesk>>;

const openDesk = async (office: typeof dark) => ({
  manager: await office.api('operations manager'),
  dispatcher: await office.api('dispatcher'),
  setUp: await office.api('set-up'),
  dataDir: office.dataDir,
});
let desk: Desk;
let other: Desk;
beforeAll(async () => {
  [desk, other] = [await openDesk(dark), await openDesk(lit)];
  for (const each of [desk, other]) {
    await flownMonday(each);
    await setClock(each, '2027-06-15T16:58Z');
    await act(each, 'F08', 'approve');
    await act(each, 'F08', 'give');
  }
}, 120_000);

it('a day on paper is typed in line by line; the projection is that of the day entered live', async () => {
  await enterLive();
  await setClock(desk, '2027-06-16T14:00Z');
  const page = await dark.signIn('dispatcher');
  await page.getByRole('button', { name: 'Radio and paper' }).waitFor();
  await page.keyboard.press('p');
  await lineOf(page).waitFor();
  await page.getByRole('button', { name: /^F08 loaded/ }).waitFor();
  await expectAccessible(page);
  const typing = { keys: 0 };

  await page.getByLabel('Day of the sheet').selectOption('2027-06-15');
  await type(page, typing, 'ESK dry 1700 helper');
  await type(page, typing, 'F07 loaded load 1983/1983 lb take-off 7012/7012 lb at 1701', {
    start: /^F07 loaded/,
  });
  // The second Enter meets an empty line.
  await page.keyboard.press('Enter');
  await type(page, typing, 'F07 off at 1720', { start: /^F07 off/ });
  await type(page, typing, 'F07 left XESK all at 1758 written 1801', { start: /^F07 left/ });
  await type(page, typing, 'F07 home at 1835', { start: /^F07 home/ });
  await type(page, typing, 'F07 reported at 1839', { start: /^F07 reported/ });
  await type(page, typing, `drawn ESK ${await sealedAt(desk, 'XESK')} 200 L into H1 P1 at 1850 by RW1 radio`);

  await page.getByLabel('Day of the sheet').selectOption('2027-06-16');
  await type(page, typing, 'LOR dry 0740 helper');
  await type(page, typing, 'F08 loaded load 2378/2378 lb take-off 8528/8528 lb at 0741', {
    start: /^F08 loaded/,
  });
  await page.getByText('No entries waiting').waitFor();
  await page.context().setOffline(true);
  await type(page, typing, 'F08 off at 0802', { start: /^F08 off/ });
  await paste(page, await deliveryText());
  await page.getByText(/^F08, 6 left at XLOR: /).waitFor();
  await page.keyboard.press('Enter');
  await page.getByText('Kept here', { exact: true }).nth(1).waitFor();
  await page.getByText('2 entries waiting').waitFor();
  await page.context().setOffline(false);
  await page.getByText('No entries waiting').waitFor();
  await type(page, typing, 'F08 home at 0940', { start: /^F08 home/ });
  await type(page, typing, 'F08 reported at 0944', { start: /^F08 reported/ });
  await type(page, typing, `drawn LOR ${await sealedAt(desk, 'XLOR')} 150 L into H2 P3 at 0955 by RW2 radio`);
  await type(page, typing, `drawn FAL ${await sealedAt(desk, 'XFAL')} 120 L into H2 P3 at 1015 by RW2 radio`);
  await page.getByText('No entries waiting').waitFor();
  expect(await page.getByText('Base says no').count()).toBe(0);
  // What a person types for the two flights and three uplifts, the pasted message apart.
  expect(typing.keys).toBeLessThan(500);

  const entered = page.getByRole('table', { name: 'Entered by radio and from paper' });
  await entered.getByRole('row', { name: /Tue 18:01 14:0\d F07 5 drums left at XESK/ }).waitFor();
  await expectAccessible(page);

  for (const each of [desk, other]) await setClock(each, '2027-06-16T14:20Z');
  expect(await projections(desk)).toEqual(await projections(other));
  for (const id of ['F07', 'F08'])
    expect((await desk.manager.get<{ state: string }>(`/api/flights/${id}`)).body.state).toBe('reported');
});

it('the next shift is handed the outage, and every entry that was made from paper', async () => {
  const page = await dark.signIn('dispatcher');
  // Until the picture is there the key rests.
  await page.getByText('then the first due').waitFor();
  await page.keyboard.press('h');
  const list = page.getByRole('list', { name: 'What is handed over' });
  await list.getByText(/Nothing reached base from Tue 16:58 to 14:00: 12 entries from paper/).waitFor();
  const words = (await list.getByRole('listitem').allTextContents()).join(' ');
  for (const said of [
    /F07: loaded with 5 drums: .*off Tue 17:20.* \(paper, FW1; entered 14:0\d by Demo dispatcher\)/,
    /F08: loaded with 6 drums: /,
    /200 L drawn at XESK from \d{4} into H1 Tue 18:50 \(radio, RW1; entered 14:0\d by Demo dispatcher\)/,
  ])
    expect(words).toMatch(said);
});

it('a line is checked as it is typed; what base does not take is written again, and what follows waits', async () => {
  const page = await dark.signIn('dispatcher');
  await page.goto('/morning/paper');
  await lineOf(page).waitFor();
  await page.getByLabel('Day of the sheet').selectOption('2027-06-15');
  await page.getByRole('button', { name: /^F05 loaded/ }).click();
  await page.keyboard.type('2378/2738 lb take-off 8528/8528 lb at 0710');
  await page.getByText(/^Two totals differ/).waitFor();
  await page.keyboard.press('Enter');
  // It has happened: base keeps it, and says what somebody has to look at.
  await page.getByText(/loaded all the same with .*; not entered as loaded/).waitFor();
  await type(page, { keys: 0 }, 'F05 reported at 0715');
  await page.getByText('Base says no').waitFor();
  await type(page, { keys: 0 }, 'F05 off at 0720');
  await page.getByText(/Kept here, until "F05 reported at 0715/).waitFor();
  await page.reload();
  await page.getByText('Base says no').waitFor();
  await page.getByRole('button', { name: 'Write it again' }).click();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('LOR damp 0700 helper');
  await page.getByText('XLOR damp', { exact: true }).waitFor();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('F05 left LOR 0409 at 0805 by FW3');
  await page.getByText(/^0409 is not on the load of F05/).waitFor();
});

it('the check code of a sheet is typed the day after: that of base says nothing, another is told before it is kept and raised', async () => {
  const { version, checkCode, loadLb, takeOffLb } = await sheetOf('F05');
  const wrong = checkCode === 'ACDE' ? 'ACDF' : 'ACDE';
  const loaded = (code: string) =>
    `F05 loaded load ${loadLb}/${loadLb} lb take-off ${takeOffLb}/${takeOffLb} lb code ${code} at 0712`;
  const unlike = `The check code of base's sheet of version ${version} is ${checkCode}, and ${wrong} of the sheet`;

  const page = await dark.signIn('dispatcher');
  await page.goto('/morning/paper');
  await lineOf(page).waitFor();
  await page.getByLabel('Day of the sheet').selectOption('2027-06-15');
  await page.getByRole('button', { name: /^F05 loaded/ }).waitFor();
  const totals = ['load', 'take-off weight'].map((of) =>
    page.waitForResponse((answer) => answer.request().postData()?.includes(`"of":"${of}"`) ?? false),
  );
  await lineOf(page).fill(loaded(wrong));
  await page.locator('.understood').getByText(unlike).waitFor();
  for (const answer of await Promise.all(totals)) expect(answer.status()).toBe(200);
  await lineOf(page).fill(loaded(checkCode.toLowerCase()));
  await page.locator('.understood b').getByText(`check code ${checkCode}`).waitFor();
  // Base has nothing to say: neither to the code nor to the totals.
  expect(await page.locator('.understood').getByText('Enter keeps it as it is written.').count()).toBe(0);

  await lineOf(page).fill(loaded(wrong));
  await page.locator('.understood').getByText(unlike).waitFor();
  await page.keyboard.press('Enter');
  await page
    .getByRole('row', { name: /F05 loaded by version/ })
    .getByText('With base')
    .waitFor();
  await page
    .getByRole('row', { name: /F05 loaded by version/ })
    .getByText(unlike)
    .waitFor();
  const { body } = await desk.manager.get<{ items: { what: string }[] }>('/api/raised?limit=500');
  expect(body.items.map(({ what }) => what).join(' ')).toContain(unlike);
});

/** What is printed on base's sheet of a flight, whose day is over. */
const sheetOf = async (id: string) => {
  const { manager } = desk;
  const { body } = await manager.get<{ version: number; checkCode: string }>(`/api/flights/${id}/check-code`);
  const total = async (of: string): Promise<number> => {
    const typed = { of, typedLb: 1, leg: 0 };
    return (await manager.post<{ bySheetLb: number }>(`/api/flights/${id}/totals`, typed)).body.bySheetLb;
  };
  return { ...body, loadLb: await total('load'), takeOffLb: await total('take-off weight') };
};

const lineOf = (page: Page) => page.getByLabel(/^One line of the sheet/);

/** As a person does: a beginning that stands ready is pressed, the rest is typed. */
const type = async (
  page: Page,
  typing: { keys: number },
  text: string,
  { start }: { readonly start?: RegExp } = {},
): Promise<void> => {
  let rest = text;
  if (start !== undefined) {
    await page.getByRole('button', { name: start }).click();
    const begun = await lineOf(page).inputValue();
    expect(text.startsWith(begun)).toBe(true);
    rest = text.slice(begun.length);
    typing.keys += 1;
  } else await lineOf(page).focus();
  await page.keyboard.type(rest);
  typing.keys += rest.length + 1;
  await page.locator('.understood b').waitFor();
  await page.keyboard.press('Enter');
  await page.waitForFunction(
    () => document.querySelector<HTMLInputElement>('.paper-line input')?.value === '',
  );
};

const paste = (page: Page, text: string): Promise<void> => lineOf(page).fill(text);

const deliveryText = async (): Promise<string> => {
  const { body } = await desk.manager.get<Flight>('/api/flights/F08');
  return `F08/1 LOR 2027-06-16 0849 LEFT ${body.loads.map(({ drum }) => drum).join(' ')} BY FW3`;
};

interface Flight {
  readonly revision: number;
  readonly version: number;
  readonly pilot: string;
  readonly toPlace: string;
  readonly loads: readonly { readonly place: string; readonly drum: string }[];
}

/** The same day at the other desk, each thing within minutes. */
const enterLive = async (): Promise<void> => {
  const send = async (path: string, at: string, body: object): Promise<void> => {
    await setClock(other, `2027-06-${at}Z`);
    const told =
      path === 'surface-reports' ? {} : { happenedAt: `2027-06-${at}Z`, writtenAt: `2027-06-${at}Z` };
    good(await other.dispatcher.put(`/api/${path}/${randomUUID()}`, { ...told, ...body }));
  };
  const surface = (place: string, at: string) =>
    send('surface-reports', at, { place, state: 'dry', at: `2027-06-${at}Z`, by: 'strip helper, by radio' });
  const drawn = async (place: string, at: string, litres: number) =>
    send('movements', at, {
      ...{ kind: 'drawn', means: 'radio', place, into: place === 'XESK' ? 'H1' : 'H2' },
      ...{ drum: await sealedAt(other, place), millilitres: litres * 1000, leftMillilitres: null },
      programme: place === 'XESK' ? 'P1' : 'P3',
    });
  const flown = async (id: string, [loaded, off, left, home, reported]: readonly string[]) => {
    const { version, toPlace, loads } = (await other.manager.get<Flight>(`/api/flights/${id}`)).body;
    const report = (at: string, body: object) =>
      send('flight-reports', at, { flight: id, means: 'radio', ...body });
    const same = {
      load: { bySheetLb: 2378, byHandLb: 2378 },
      takeOff: { bySheetLb: 8528, byAircraftLb: 8528 },
    };
    const drums = loads.map(({ drum, place }) => ({ movement: randomUUID(), drum, to: place }));
    await report(loaded!, { kind: 'load', version, drums, totals: same });
    await report(off!, { kind: 'take off' });
    for (const { drum, place } of loads)
      await send('movements', left!, {
        ...{ kind: 'left at', means: 'radio', flight: id, leg: 1, drum, place },
        ...{ condition: 'sound', foundMillilitres: null },
      });
    await report(home!, { kind: 'land', place: toPlace });
    await report(reported!, { kind: 'report' });
  };
  await surface('XESK', '15T17:00');
  await flown('F07', ['15T17:01', '15T17:20', '15T17:58', '15T18:35', '15T18:39']);
  await drawn('XESK', '15T18:50', 200);
  await surface('XLOR', '16T07:40');
  await flown('F08', ['16T07:41', '16T08:02', '16T08:49', '16T09:40', '16T09:44']);
  await drawn('XLOR', '16T09:55', 150);
  await drawn('XFAL', '16T10:15', 120);
};

const sealedAt = async ({ manager }: Desk, place: string): Promise<string> => {
  const { body } = await manager.get<{ items: { number: string; content: string }[] }>(
    `/api/drums?place=${place}&limit=500`,
  );
  return body.items.find(({ content }) => content === 'filled sealed')!.number;
};

const projections = async ({ manager }: Desk): Promise<unknown> =>
  (await manager.get<{ items: unknown }>('/api/projections')).body.items;

const act = async (
  { dispatcher }: { readonly dispatcher: Client },
  id: string,
  name: string,
): Promise<void> => {
  const { revision } = (await dispatcher.get<Flight>(`/api/flights/${id}`)).body;
  const headers = { 'If-Match': `"${revision}"` };
  good(await dispatcher.post(`/api/flights/${id}/${name}`, {}, { headers }));
};

const setClock = async ({ setUp }: { readonly setUp: Client }, clockStartsAt: string): Promise<void> => {
  const path = '/api/settings/current';
  const { body } = await setUp.get<{ version: number; data: object }>(path);
  good(await setUp.change(path, body.version, { ...body.data, clockStartsAt }));
};

const good = ({ status, body }: { readonly status: number; readonly body: unknown }): void => {
  if (status >= 300) throw new Error(`${status}: ${JSON.stringify(body)}`);
};
