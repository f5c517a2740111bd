import { randomUUID } from 'node:crypto';
import type { ProjectionAnswer } from '@drumline/contract';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Client } from '../../apps/server/src/testing/client.js';
import { openOffice } from './testing/open-office.js';
import { openPhone, type Phone } from './testing/phone.js';
import { expectFits, expectInView, isInView } from './testing/phone-fit.js';

// J27-041 is held, so XESK has 1,200 L usable of 2,400 L: drums 0467 to 0472 of J27-012, 200 L each.
const office = openOffice({ own: true });
let manager: Client;
let phone: Phone;
let page: Page;

beforeAll(async () => {
  manager = await office.api('operations manager');
  const hold = {
    kind: 'held',
    of: { batch: 'J27-041' },
    reason: 'water found at Merrow',
    happenedAt: '2027-06-14T05:58Z',
    writtenAt: '2027-06-14T05:58Z',
    means: 'screen',
  };
  expect((await manager.put(`/api/movements/${randomUUID()}`, hold)).status).toBe(200);
  phone = await openPhone({ url: office.url });
  page = phone.page;
  await phone.signIn('helicopter-crew');
  await page.getByRole('link', { name: /P1 ridge survey/ }).waitFor();
}, 90_000);
afterAll(() => phone?.close());

const projectionAt = async (place: string): Promise<ProjectionAnswer> =>
  (await manager.get<ProjectionAnswer>(`/api/projections/${place}`)).body;
const press = (name: string | RegExp) => page.getByRole('button', { name }).click();
const follow = (name: string | RegExp) => page.getByRole('link', { name }).click();
const type = async (figures: string) => {
  for (const figure of figures) await page.getByRole('button', { name: figure, exact: true }).click();
};
/** Drum numbers are read digit by digit. */
const spoken = (number: string) => new RegExp(`drum ${[...number].join(' ')}`);
const goTo = async (place: string) => {
  await page.goto(`/phone/#/at/${place}`);
  await page.getByRole('heading', { level: 1, name: new RegExp(place) }).waitFor();
};
const tickAll = async () => {
  for (const check of await page.getByRole('checkbox').all()) await check.check({ force: true });
};
const drumsInOrder = async () => {
  await page.getByRole('heading', { name: 'Open in this order' }).waitFor();
  const rows = await page.getByRole('listitem').filter({ hasText: /drum/ }).allInnerTexts();
  return rows.map((row) => /\b0\d{3}\b/.exec(row)?.[0]);
};
const shot = async (name: string) => {
  if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/${name}.png` });
};

describe('a helicopter crew at XESK, with the line cut', () => {
  it('reads the drums in order of use, held ones last and with the word HOLD', async () => {
    expect((await projectionAt('XESK')).stock.usableLitres).toBe(1200);
    await page.reload();
    await page.getByRole('link', { name: /P1 ridge survey/ }).waitFor();
    await shot('helicopter-day');
    await page.getByText(/^With base/).waitFor();
    await phone.offline(true);
    // At once, not when the next round fails.
    await page.getByText('Not with base now').waitFor({ timeout: 5_000 });
    await follow(/P1 ridge survey/);
    await page.getByText('usable 1,200 L').waitFor();
    await page.getByText(/400 L of it reserve/).waitFor();
    expect((await drumsInOrder()).slice(0, 7)).toEqual([
      '0467',
      '0468',
      '0469',
      '0470',
      '0471',
      '0472',
      '0503',
    ]);
    expect(await page.getByText('HOLD', { exact: true }).count()).toBe(6);
    await expectFits(page, expect.getState().currentTestName!);
    await shot('helicopter-cache');
  });

  it('may not type litres before the four checks of a drum; the gauge is a check, and no verdict', async () => {
    await follow('Draw');
    const checked = page.getByRole('button', { name: /Checked/ });
    await page.getByText(/No water.*not ticked yet/).waitFor();
    await checked.click({ force: true }); // it waits, and says why
    expect(await page.getByRole('checkbox').count()).toBe(4);
    await expectFits(page, expect.getState().currentTestName!);
    await shot('helicopter-checks');
    await tickAll();
    await checked.click();
    for (const number of ['0468', '0469']) {
      await press(`Another drum: ${number}`);
      await tickAll();
      await checked.click();
    }
    // Three drums, the figures and every key in one view of the measure.
    await expectInView(page, ['Another drum: 0470', /Drawn/, /before/, /after/, '1', 'Clear', 'Back']);
    for (const number of ['0467', '0468', '0469'])
      expect([number, await page.getByText(number, { exact: true }).evaluate(isInView)]).toEqual([
        number,
        true,
      ]);
    await shot('helicopter-three-drums');
    await type('225');
    await page.getByRole('button', { name: /before/ }).click();
    await type('410');
    await page.getByRole('button', { name: /after/ }).click();
    await type('806');
    await page.getByText('396 lb is 224.5 L at 0.80 kg/L.').waitFor();
    await page.getByText('You wrote 225 L: 0.5 L apart.').waitFor();
    await page.getByText('175 L left').waitFor();
    await page.getByText('P1 ridge survey').waitFor();
    await page.getByText('225 L, then 975 L usable at XESK').waitFor();
    await expectFits(page, expect.getState().currentTestName!);
    await shot('helicopter-litres');
    await page.getByText('cm, upright drum').click();
    await page.getByText('The stick in cm, or “Not looked at”').waitFor();
    await type('68');
    expect(await page.getByRole('button', { name: /Wetted stick/ }).textContent()).toContain('68');
    expect(await page.getByRole('button', { name: /gauge after/ }).textContent()).toContain('806');
    const stick = (await page.getByRole('button', { name: /Wetted stick/ }).boundingBox())!;
    const acts = (await page.getByRole('navigation', { name: 'Actions' }).boundingBox())!;
    expect(stick.y + stick.height).toBeLessThanOrEqual(acts.y);
    await shot('helicopter-stick');
    await press(/^Keep/);
    await page.getByText('usable 975 L').waitFor();
    await page.getByText('Below minimum').first().waitFor();
    await page.getByText('225 L drawn at XESK from 0467, 0468').waitFor();
    await page.getByText(/Kept on this phone/).waitFor();
    expect((await drumsInOrder())[0]).toBe('0468');
  });

  it('a drum that fails a check is unusable at once on that phone', async () => {
    await follow(spoken('0469'));
    await page.getByText('0468 comes before it.').waitFor();
    await press(/Reject/);
    await page.getByText('Water found', { exact: true }).click();
    await press(/^Keep/);
    await page.getByText('usable 775 L').waitFor();
    expect((await drumsInOrder()).slice(0, 4)).toEqual(['0468', '0470', '0471', '0472']);
    await page.getByText(/Rejected before pumping: water found; marked X/).waitFor();
  });

  it('a held drum is refused with its reason; what was drawn from it already is kept all the same', async () => {
    await follow(spoken('0503'));
    await page.getByText('Water found at Merrow.').waitFor();
    await expectFits(page, expect.getState().currentTestName!);
    await shot('helicopter-hold');
    await follow('I have already drawn from it');
    await type('60');
    await page.getByText(/Pump no more of it/).waitFor();
    await press(/^Keep anyway/);
    await page.getByText('60 L drawn at XESK from 0503').waitFor();
    await page.getByText('usable 775 L').waitFor();
  });

  it('opens again without a line, with all of it', async () => {
    await phone.restart();
    page = phone.page;
    await goTo('XESK');
    await page.getByText('usable 775 L').waitFor();
    await page.getByText(/Not with base/).waitFor();
  });

  it('a routine draw that goes into the reserve says so, and a medevac may', async () => {
    await follow('Draw');
    await tickAll();
    await press(/Checked/);
    for (const number of ['0470', '0471']) {
      await press(new RegExp(`Another drum: ${number}`));
      await tickAll();
      await press(/Checked/);
    }
    await type('400');
    await page.getByText('25 L of it are the medevac reserve.').waitFor();
    await page.getByText('Into the reserve: say for what').waitFor();
    await press('Clear');
    await type('100');
    await press('Medevac');
    await page.getByText('Say what the medevac is').waitFor();
    await page.getByLabel('Who or what, and where').fill('fall at the ridge');
    await page.getByText(/P0/).waitFor();
    await press(/^Keep/);
    await page.getByText(/100 L drawn at XESK from 0468, medevac/).waitFor();
    await page.getByText('usable 675 L').waitFor();
  });

  it('a sling moves three of the oldest, and both places say so', async () => {
    await follow('Sling');
    await page.getByText(/This lift, 3 of at most 3/).waitFor();
    await page.getByText('After this lift:').waitFor();
    await expectFits(page, expect.getState().currentTestName!);
    await shot('helicopter-sling');
    await press(/^Set down/);
    await page.getByText(/3 drums set down at XMAR from XESK: 0470, 0471, 0472/).waitFor();
    await page.getByText('3 of 6 set down').waitFor();
    await goTo('XESK');
    await page.getByText('usable 75 L').waitFor();
    await page.getByText('Below critical', { exact: true }).waitFor();
  });

  it('a drum too many in the sling is taken back on the phone, and its litres are where they were', async () => {
    await page.goto('/phone/#/sent');
    await follow(/3 drums set down at XMAR from XESK/);
    await page.getByRole('heading', { name: 'What is wrong with it?' }).waitFor();
    await page.getByText('Tick what is wrong').waitFor();
    for (const number of ['0470', '0471', '0472'])
      expect(await page.getByRole('checkbox', { name: spoken(number) }).isChecked()).toBe(false);
    await page.getByRole('checkbox', { name: spoken('0472') }).check({ force: true });
    await page.getByText('Say why').waitFor();
    await page.getByLabel('What was wrong').fill('0472 stayed at ESK');
    await expectFits(page, expect.getState().currentTestName!);
    await shot('helicopter-take-back');
    await press(/^Take back/);
    await page.getByText('Taken back: drum 0472, set down at XMAR from XESK').waitFor();
    await page.getByText('usable 275 L').waitFor();
    await page.goto('/phone/#/at/XESK/sling');
    await page.getByText('2 of 6 set down').waitFor();
    await press(/^Set down/);
    await page.getByText('3 of 6 set down').waitFor();
    await goTo('XESK');
    await page.getByText('usable 75 L').waitFor();
  });

  it('a count hides the book until Keep', async () => {
    await page.goto('/phone/#/at/XKNA/count');
    await page.getByRole('heading', { level: 1, name: /Count .* XKNA/ }).waitFor();
    expect(await page.getByText(/720/).count()).toBe(0);
    for (let drums = 0; drums < 3; drums += 1) await press('one more Sealed');
    await press('one more Open');
    await page.getByText('What is in the open drums first').waitFor();
    // 34 cm in an upright drum is 87 L: three sealed and one open are 687 L, 33 L less than the book.
    await page.getByText('cm, upright drum', { exact: true }).click();
    await page.getByRole('button', { name: /^Wetted stick/ }).waitFor();
    await type('34');
    await page.getByText('= 87 L, ± 1.3 L by the marks of the stick').waitFor();
    await expectFits(page, expect.getState().currentTestName!);
    await shot('helicopter-count');
    await press(/^Keep/);
    await page.getByText('Short.').waitFor();
    await page.getByText('33 L less than the book.').waitFor();
    await shot('helicopter-count-kept');
  });
});

describe('with the line back', () => {
  it('everything arrives once, and the office’s projection has it at once', async () => {
    expect((await projectionAt('XESK')).stock.usableLitres).toBe(1200);
    await phone.offline(false);
    await page.goto('/phone/#/sent');
    await page.getByText('Everything is with base').waitFor();
    await page.getByText(/Base will look at: .*uses fuel that is held: water found at Merrow/).waitFor();
    await shot('helicopter-sent');

    const esk = await projectionAt('XESK');
    expect(esk.stock).toMatchObject({ bookLitres: 2400 - 225 - 60 - 100 - 600, usableLitres: 75 });
    expect(esk.stock.level).toBe('below critical');
    expect(esk.projections.noDeliveries.usableLitres[0]).toBe(75);
    // 450 L were planned for P1 today: what was drawn for it is not drawn again. The medevac is taken off no task.
    expect(esk.draws.filter(({ date }) => date === '2027-06-14')).toEqual([
      expect.objectContaining({ for: 'P1', litres: 450 - 225 - 60 }),
    ]);
    const mar = await projectionAt('XMAR');
    expect(mar.stock.sealedDrums).toBeGreaterThanOrEqual(3);
    const { lastCount } = (await projectionAt('XKNA')).stock;
    expect(lastCount).toMatchObject({ countedLitres: 687, verdict: 'lower' });
  });

  it('the phone and the office have the same figures', async () => {
    await goTo('XESK');
    await page.getByText('usable 75 L').waitFor();
    const raised = await manager.get<{ items: { kind: string; drum: string | null }[] }>(
      '/api/raised?limit=500',
    );
    expect(raised.body.items).toContainEqual(
      expect.objectContaining({ kind: 'held drum used', drum: '0503' }),
    );
    await page.goto('/phone/#/you');
    await press('Dim, for dark');
    await goTo('XESK');
    await shot('helicopter-cache-dim');
    // It looks in dim and in light, and leaves it light.
    await expectFits(page, expect.getState().currentTestName!);
  });
});
