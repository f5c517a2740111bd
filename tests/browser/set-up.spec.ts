import { expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

// product.md, M5 and M6: type B from ALD to LOR, 6 drums dry and 4 soft.
it('a strip limit is drafted by set-up with its drums beside it, and stands when two people have signed', async () => {
  const page = await office.signIn('set-up');
  await page.goto('/set-up/strip-limits');
  const landing = page.getByLabel('XLOR B, Landing, lb');
  await landing.waitFor();
  await page.getByLabel('Drums from').selectOption('XALD');
  await page
    .getByRole('row', { name: /^XLOR B/ })
    .getByText('6, 4')
    .waitFor();
  await expectAccessible(page);

  await landing.fill('18300');
  await page.getByRole('heading', { name: 'What the draft would change' }).waitFor();
  await page.getByRole('table', { name: 'Faults' }).getByText('XLOR-B, Landing, lb').waitFor();
  await page.getByText('A fault keeps the draft back.').waitFor();

  await landing.fill('7600');
  await page.getByRole('listitem').filter({ hasText: 'XLOR B from XALD: 6, 4 to' }).waitFor();
  await page.getByText('Give the table and revision that the figures come from.').waitFor();
  await page.getByLabel('Reference of what you change: table and revision').fill('demo table, revision 13');
  await page.getByRole('button', { name: 'Ask for signatures' }).click();
  await page.getByText('1 limit waits for a second person.').waitFor();

  const inForce = async () => {
    const { body } = await (await office.api('dispatcher')).get<{
      data: { landingLb: number; reference: string };
    }>('/api/strip-limits/XLOR-B');
    return body.data;
  };
  for (const role of ['operations manager', 'fuel quality'] as const) {
    expect((await inForce()).landingLb).toBe(8300);
    const second = await office.signIn(role);
    await second.goto('/set-up/strip-limits');
    await second.getByText('7,600, waits').waitFor();
    const waiting = second.getByRole('row', { name: /strip limit XLOR-B/ });
    expect(
      await waiting
        .getByRole('list', { name: 'What changes: XLOR-B' })
        .getByRole('listitem')
        .allTextContents(),
    ).toEqual([
      'Landing limit, dry or damp: 8,300 lb > 7,600 lb',
      'Table and revision: demo table, revision 12 > demo table, revision 13',
    ]);
    await waiting.getByText('XLOR B from XALD: 6, 4 to').waitFor();
    await waiting.getByText(/^Demo set-up, 0\d:\d\d$/).waitFor();
    await waiting
      .getByText(
        role === 'fuel quality'
          ? 'fuel quality has still to sign'
          : '2 of operations manager, fuel quality have still to sign',
      )
      .waitFor();
    await waiting.getByRole('button', { name: 'Sign' }).click();
    await second
      .getByText(
        role === 'fuel quality' ? 'demo table, revision 12; demo table, revision 13' : 'Signed by you.',
      )
      .waitFor();
  }
  expect(await inForce()).toMatchObject({ landingLb: 7600, reference: 'demo table, revision 13' });
});

// product.md, T9: the customer adds 3 h at MAR on day 3, 336 L more.
it('T9: a row of the programme says before it is saved that MAR falls from 375 to 39 L on Wed 16', async () => {
  const page = await office.signIn('dispatcher');
  await page.goto('/set-up/helicopter-tasks');
  await page.getByRole('button', { name: 'New helicopter task' }).click();
  const form = page.getByRole('form', { name: 'New helicopter task' });
  await form.getByLabel('Day').fill('2027-06-16');
  await form.getByLabel('Helicopter').fill('H1');
  await form.getByLabel('Programme').fill('P1');
  await form.getByLabel('Cache drawn from').fill('XMAR');
  await form.getByLabel('Flight hours').fill('3');
  await form.getByLabel('Fuel drawn').fill('336');
  const touched = form.getByRole('row', { name: /XMAR Wed 16/ });
  await touched.waitFor();
  expect(await touched.getByRole('cell').allTextContents()).toEqual([
    'Wed 16',
    '375 L',
    '39 L',
    'below critical 200 L; before: below minimum 400 L',
  ]);
  await expectAccessible(page);
  await form.getByRole('button', { name: 'Save' }).click();
  await page.getByText('Saved: helicopter task.').waitFor();
  const row = page.getByRole('row', { name: /16 June 2027 H1 P1 XMAR 3 h 336 L Demo dispatcher 1/ });
  await row.waitFor();

  await row.getByRole('button').click();
  const kept = page.getByRole('form', { name: /Helicopter tasks/ });
  await kept.getByText('Version 1, by Demo dispatcher').waitFor();
  await kept.getByLabel('Fuel drawn').fill('a lot');
  await kept.getByRole('button', { name: 'Save' }).click();
  await kept.getByText('Fault: "a lot" is not a number.').waitFor();
});

it('the odds of a morning are typed and read in per cent', async () => {
  const page = await office.signIn('operations manager');
  await page.goto('/set-up/weather/XGAN');
  const form = page.getByRole('form', { name: 'Weather odds: XGAN' });
  const morning = form.getByLabel('Chance that a morning flight is cancelled');
  const manager = await office.api('operations manager');
  const kept = async () =>
    (await manager.get<{ data: { morningCancel: number } }>('/api/weather/XGAN')).body.data.morningCancel;
  expect(Number(await morning.inputValue())).toBe(Math.round((await kept()) * 100));

  await morning.fill('120');
  await form.getByRole('button', { name: 'Save' }).click();
  // At the field and in the list, in the figure that was typed.
  await form.getByText('Fault: 120 % is too large. Give at most 100 %.').waitFor();
  await form
    .getByText('Chance that a morning flight is cancelled: 120 % is too large. Give at most 100 %.')
    .waitFor();
  await morning.fill('8');
  await form.getByRole('button', { name: 'Save' }).click();
  await page.getByText('Saved: line of weather odds.').waitFor();
  expect(await kept()).toBe(0.08);
  await page.getByRole('row', { name: /^XGAN 8 %/ }).waitFor();
});

it('two people at one cache: the later one is told, and nothing is overwritten', async () => {
  const page = await office.signIn('operations manager');
  await page.goto('/set-up/caches/XLOR');
  const form = page.getByRole('form', { name: 'Caches: levels: XLOR' });
  await form.getByLabel('Empty drums there').fill('3');

  const other = await office.api('operations manager');
  const { body } = await other.get<{ version: number; data: object }>('/api/caches/XLOR');
  await other.change('/api/caches/XLOR', body.version, { ...body.data, empties: 11 });
  await form.getByText('Changed by somebody else meanwhile.').waitFor();
  await form.getByRole('button', { name: 'Save' }).click();
  await form.getByText(/is at version 2 by now/).waitFor();
  expect((await other.get<{ data: object }>('/api/caches/XLOR')).body.data).toMatchObject({ empties: 11 });
});

it('a CSV of limits is tried first: its fault by line and cell, and nothing saved; put right, it is proposed', async () => {
  const page = await office.signIn('operations manager');
  await page.goto('/set-up/strip-limits');
  const heads = 'place,type,takeoffLb,landingLb,whenSoft,softTakeoffLessLb,softLandingLessLb,reference';
  const file = (landing: string) => ({
    name: 'strip-limits-june.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(
      `${heads}\nXDUN,A,6850,6900,,350,300,revision 13\nXDUN,B,8150,${landing},,450,400,revision 13\n`,
    ),
  });
  await page.getByLabel('Bring in a CSV file').setInputFiles(file('8.9k'));
  await page.getByRole('heading', { name: 'Dry run of strip-limits-june.csv' }).waitFor();
  await page.getByText('Nothing has been saved.').waitFor();
  const fault = page
    .getByRole('table', { name: 'Faults' })
    .getByRole('row', { name: /^3 Landing limit.*in the file: landingLb/ });
  expect(await fault.textContent()).toContain('8.9k');
  await page.getByText('A file with faults stays out.').waitFor();
  await expectAccessible(page);

  await page.getByLabel('Bring in a CSV file').setInputFiles(file('8100'));
  await page.getByText(/Changed: 2/).waitFor();
  await page.getByRole('button', { name: 'Propose the limits' }).click();
  await page.getByText('Proposed: a second person signs.').waitFor();
});

it('a person is added with a one-time password, and the audit says so', async () => {
  const page = await office.signIn('operations manager');
  await page.goto('/set-up/people');
  await page.getByRole('button', { name: 'New person' }).click();
  const form = page.getByRole('form', { name: 'New person' });
  await form.getByLabel('Sign-in name').fill('N Vale');
  await form.getByLabel('Full name').fill('N. Vale');
  await form.getByLabel('storekeeper').check();
  await form.getByRole('button', { name: 'Save' }).click();
  await form.getByText(/Fault: .*a sign-in name is/).waitFor();
  await form.getByLabel('Sign-in name').fill('n.vale');
  await form.getByRole('button', { name: 'Save' }).click();
  expect(await page.getByLabel('One-time password', { exact: true }).textContent()).toMatch(/\S{8,}/);
  await expectAccessible(page);
  await page.goto('/set-up/audit');
  await page.getByRole('row', { name: /added account n\.vale/ }).waitFor();
});

it('a file that is brought in is done with: what it did is told, and no fault is spoken of', async () => {
  const page = await office.signIn('set-up');
  await page.goto('/set-up/files');
  const drums = page.getByRole('region', { name: 'Drums received, CSV' });
  const choose = (name: string, text: string) =>
    drums
      .getByLabel('Bring in a CSV file')
      .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
  await choose('drums.csv', '');
  await drums.getByText('The file is empty.').waitFor();
  await choose('drums.xlsx', 'PK\u0003\u0004\0');
  await drums.getByText('save it as CSV, from the spreadsheet.').waitFor();
  const heads = 'number,place,batch,content,litres,openedAt,tareKg,grossKg,happenedAt';
  await choose('heads.csv', `${heads}\n`);
  await drums.getByText('Nothing in it is new.').waitFor();
  await choose(
    'drums.csv',
    `${heads}\n9401,XALD,J27-041,filled sealed,200,,"19,7",179.1,2027-06-14T05:00Z\n`,
  );
  await drums.getByText('Write decimals with a point: 19.7.').waitFor();
  await choose('drums.csv', `${heads}\n9401,XALD,J27-041,filled sealed,200,,19.7,179.1,2027-06-14T05:00Z\n`);
  await drums.getByText('New: 1.').waitFor();
  await drums.getByRole('button', { name: 'Bring it in' }).click();
  await drums.getByText('Brought in: drums.csv. New: 1. Changed: 0. Taken out: 0.').waitFor();
  expect(await drums.getByText('A file with faults stays out.').count()).toBe(0);
});

it('the dry run is of what the tick says now: changed, the file is tried anew before it can be brought in', async () => {
  const page = await office.signIn('set-up');
  await page.goto('/set-up/files');
  const tasks = page.getByRole('region', { name: 'Helicopter tasks, CSV' });
  const text = await (await page.request.get('/api/csv/helicopter-tasks')).text();
  const [heads, first] = text.split('\n');
  await tasks
    .getByLabel('Bring in a CSV file')
    .setInputFiles({ name: 'one.csv', mimeType: 'text/csv', buffer: Buffer.from(`${heads}\n${first}\n`) });
  await tasks.getByText(/Not in the file, and left as they are: /).waitFor();
  const asked = page.waitForRequest(/helicopter-tasks\?dryRun=true&remove=yes/);
  await tasks.getByLabel('What is not in the file is taken out').check();
  await asked;
  await tasks.getByText(/Not in the file, and taken out: /).waitFor();
  await tasks.getByLabel('What is not in the file is taken out').uncheck();
  await tasks.getByText(/Not in the file, and left as they are: /).waitFor();
  await tasks.getByText('Nothing in it is new.').waitFor();
});
