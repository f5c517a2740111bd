import { describe, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import type { Phone } from './testing/phone.js';
import { type Drum, openPhoneDesk, type Reported, spoken } from './testing/phone-desk.js';

const desk = openPhoneDesk();
const { phoneOf, newPhone, newcomer, crewMember, movementsOf, shot } = desk;

const leaveAll = async ({ page }: Phone): Promise<void> => {
  await page.getByRole('link', { name: /F06/ }).click();
  await page.getByRole('link', { name: 'Left here' }).click();
  await page.getByRole('button', { name: 'All 4, good' }).click();
  await page.getByRole('button', { name: /^Keep/ }).click();
  await page.getByText('4 left, 0 brought back, by this phone').waitFor();
};

const whereIs = async (number: string): Promise<Drum> =>
  (await desk.dispatcher.get<Drum>(`/api/drums/${number}`)).body;

describe('a report that was wrong, with the line cut', () => {
  it('is put right by another that takes it back; who else reported the same is told, and counts once', async () => {
    const phone = await phoneOf('pilot');
    const second = await phoneOf(await crewMember('second'));
    const { page } = phone;
    await phone.offline(true);
    await leaveAll(phone);
    await page.getByRole('link', { name: '1 waiting', exact: true }).click();
    await page.getByRole('link', { name: /4 left at XGAN/ }).click();
    await page.getByRole('heading', { name: 'What is so?' }).waitFor();
    await page.getByText('Tap what is wrong').waitFor();
    await page.getByRole('button', { name: spoken('0578') }).click();
    await page.getByText('Bring back', { exact: true }).click();
    await page.getByText('Seal broken', { exact: true }).click();
    await page.getByRole('button', { name: 'Next drum' }).click();
    // What is begun is there after a reload.
    await page.reload();
    await page.getByText('0578 brought back, seal broken.').waitFor();
    await expectAccessible(page);
    await shot(phone, 'phone-correct');
    await page.getByRole('button', { name: /^Correct/ }).click();
    await page.getByText('Corrected: 0578 brought back, seal broken').waitFor();
    await page.getByText('Corrected since.').waitFor();
    await page.getByRole('link', { name: '2 waiting', exact: true }).waitFor();
    await phone.restart();
    await phone.page.getByRole('link', { name: /F06/ }).click();
    await phone.page.getByText('3 left, 1 brought back, by this phone').waitFor();

    await second.offline(true);
    await leaveAll(second);
    for (const each of [phone, second]) {
      await each.offline(false);
      await each.page.getByRole('link', { name: '0 waiting', exact: true }).waitFor();
    }
    const reports = await movementsOf('0578');
    const wrong = reports.find(({ kind, by }) => kind === 'left at' && by === 'Demo pilot')!;
    const { body: ledger } = await desk.dispatcher.get<{ items: { movement: Reported }[] }>(
      '/api/movements?limit=100',
    );
    const reversals = ledger.items.filter(({ movement }) => movement.kind === 'corrected');
    expect(reversals).toMatchObject([{ movement: { corrects: wrong.id } }]);
    expect(reports.filter(({ kind }) => kind === 'brought home')).toHaveLength(1);
    for (const number of ['0572', '0574', '0575']) {
      expect((await whereIs(number)).where).toMatchObject({ kind: 'at', place: 'XGAN' });
      const left = (await movementsOf(number)).filter(({ kind }) => kind === 'left at');
      expect(left.map(({ by }) => by).sort()).toEqual(['Crew second', 'Demo pilot']);
    }
    expect((await whereIs('0578')).held ?? null).not.toBeNull();

    // The second phone finds its own slip and takes it back: nothing of that drum is its word any more.
    await second.page.getByRole('link', { name: '0 waiting', exact: true }).click();
    await second.page.getByRole('link', { name: /4 left at XGAN/ }).click();
    await second.page.getByRole('button', { name: spoken('0578') }).click();
    await second.page.getByRole('button', { name: 'Nothing of this drum' }).click();
    await second.page.getByRole('button', { name: /^Correct/ }).click();
    await second.page.getByText('Corrected: nothing of 0578').waitFor();
    await second.page.getByRole('link', { name: '0 waiting', exact: true }).waitFor();
    expect((await whereIs('0578')).where).toMatchObject({ kind: 'aboard', flight: 'F06' });

    await phone.page.getByRole('link', { name: '0 waiting', exact: true }).click();
    await phone.page.getByRole('button', { name: 'Try now' }).click();
    await phone.page.getByText(/Also reported by Crew second at \d\d:\d\d\. Counted once\./).waitFor();
    await expectAccessible(phone.page);
    await shot(phone, 'phone-also');
  }, 180_000);
});

describe('the first sign-in with a one-time password', () => {
  it('asks for a password of one’s own before anything else, also after a reload', async () => {
    const oneTime = await newcomer('novice');
    const phone = await newPhone();
    const { page } = phone;
    await page.goto('/phone/');
    await page.getByLabel('Name').fill('novice');
    await page.getByLabel('Password').fill(oneTime);
    await page.getByRole('button', { name: 'Sign in' }).click();
    await page.getByRole('heading', { name: 'Choose your password' }).waitFor();
    await expectAccessible(page);
    await shot(phone, 'phone-password');
    await page.reload();
    const own = 'a long word of my own';
    await page.getByLabel('One-time password').fill('not what was given');
    await page.getByLabel('New password', { exact: true }).fill(own);
    await page.getByLabel('New password again').fill('another');
    await page.getByLabel('New password again').fill(`${own}s`);
    await page.getByRole('button', { name: 'Keep this password' }).click();
    await page.getByText('The two new ones differ. Type both again.').waitFor();
    await page.getByLabel('New password again').fill(own);
    await page.getByRole('button', { name: 'Keep this password' }).click();
    await page.getByText(/this is not your password/).waitFor();
    await page.getByLabel('One-time password').fill(oneTime);
    await page.getByRole('button', { name: 'Keep this password' }).click();
    await page.getByRole('link', { name: /F06/ }).waitFor();
  }, 120_000);
});

// Last: the flight is not this crew's any more afterwards.
describe('a report that the phone cannot take back', () => {
  it('that only base can put right is told to base; a surface is reported again', async () => {
    const phone = await phoneOf('pilot');
    const { page } = phone;
    await phone.offline(true);
    await page.getByRole('link', { name: /F06/ }).click();
    await page.getByRole('link', { name: 'Problem' }).click();
    await page.getByText('I will not fly this', { exact: true }).click();
    await page.getByRole('button', { name: 'Keep' }).click();
    await page.getByText('You will not fly this.').waitFor();
    await page.getByRole('link', { name: '1 waiting', exact: true }).click();
    await page.getByRole('link', { name: /F06: I will not fly this/ }).click();
    await page.getByLabel('What is so').fill('pressed by mistake, I fly it');
    await expectAccessible(page);
    await shot(phone, 'phone-tell-wrong');
    await page.getByRole('button', { name: 'Tell base' }).click();
    await page.getByRole('link', { name: '2 waiting', exact: true }).waitFor();
    await phone.offline(false);
    await page.getByRole('link', { name: '0 waiting', exact: true }).waitFor();
    const { body } = await desk.dispatcher.get<{ items: { kind: string; raised: string[] }[] }>(
      '/api/flight-reports?flight=F06',
    );
    expect(body.items.find(({ kind }) => kind === 'problem')!.raised.join()).toContain(
      'Wrongly reported: F06: I will not fly this',
    );
  }, 120_000);
});
