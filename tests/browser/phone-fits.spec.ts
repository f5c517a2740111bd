import { expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { openPhoneDesk } from './testing/phone-desk.js';

const { phoneOf, newPhone, shot } = openPhoneDesk();

/** Every page of the pilot's phone that no other test takes: its path, and a word that is on it. */
const pages = [
  ['day', '/', 'Check now'],
  ['leg-home', '/F06/2', 'Go back if'],
  ['left-here', '/F06/left/1/XGAN', 'All 4, good'],
  ['bring-back', '/F06/back/1/XGAN', 'Another drum'],
  ['elsewhere', '/F06/elsewhere/1', 'Any place counts.'],
  ['problem', '/F06/problem/1', 'I will not fly this'],
  ['surface', '/surface/XGAN', 'wheels leave ruts'],
  ['sent', '/sent', 'Nothing reported on this phone yet.'],
  ['you', '/you', 'Sign out'],
  ['nothing-there', '/F99/1', 'No such leg on this phone.'],
] as const;

/** Runs in the page: what is wider than the phone, or cut off inside what it stands in. */
const cutOff = (): readonly string[] => {
  const wide = document.documentElement.scrollWidth > document.documentElement.clientWidth;
  const cut = [...document.querySelectorAll<HTMLElement>('main *:not(.vis-hide):not(.vis-hide *)')].filter(
    (each) =>
      each.scrollWidth > each.clientWidth + 1 &&
      each.clientWidth > 0 &&
      getComputedStyle(each).display !== 'inline' &&
      each.tagName !== 'INPUT',
  );
  return [...(wide ? ['the page'] : []), ...cut.map((each) => `${each.className}: ${each.textContent}`)];
};

it('every page fits 360 x 640: nothing is cut off, by day and by night', async () => {
  const stranger = await newPhone();
  await stranger.page.goto('/phone/');
  await stranger.page.getByRole('button', { name: 'Sign in' }).waitFor();
  expect(await stranger.page.evaluate(cutOff)).toEqual([]);
  await shot(stranger, 'phone-sign-in');
  const phone = await phoneOf('pilot');
  for (const [name, path, word] of pages) {
    await phone.page.evaluate((to) => (window.location.hash = `#${to}`), path);
    await phone.page.getByText(word).first().waitFor();
    expect([name, await phone.page.evaluate(cutOff)]).toEqual([name, []]);
    await shot(phone, `phone-${name}`);
    await phone.page.evaluate(() => (document.documentElement.dataset.ground = 'dim'));
    await expectAccessible(phone.page);
    await phone.page.evaluate(() => (document.documentElement.dataset.ground = 'light'));
  }
}, 120_000);
