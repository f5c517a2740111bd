import { describe, expect, it } from 'vitest';
import { expectInSight } from './testing/expect-in-sight.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice();

const ofCaches = [
  ['operations manager', 'c', /^Enter count/],
  ['operations manager', 'p', /^Change task or sling/],
  ['operations manager', 'm', /^Change minimum/],
  ['dispatcher', 'd', /^Add draw/],
] as const;

const ofDrums = [
  ['dispatcher', '?act=hold&batch=J27-041', 'Set the hold'],
  ['dispatcher', '/0514?act=hold', 'Set the hold'],
  ['dispatcher', '?act=count', 'Count a place'],
  ['storekeeper', '?act=fill', 'Fill a drum'],
  ['storekeeper', '/0514?act=join', 'Bring two numbers together'],
] as const;

describe.each([
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
])('at $width', (size) => {
  it.each(ofCaches)('the form that %s opens by %s stands whole in its column', async (role, key, title) => {
    const page = await office.signIn(role, size);
    await page.goto('/caches/XLOR');
    await page.getByRole('button', { name: title }).waitFor();
    await page.keyboard.press(key);
    const form = page.getByRole('form', { name: title });
    await form.waitFor();
    const [wide, room] = await form.evaluate((element) => [element.scrollWidth, element.clientWidth]);
    expect(wide).toBeLessThanOrEqual(room);
    await expectInSight(form);
  });

  it.each(ofDrums)('Drums, %s, %s: the whole of "%s" is in sight', async (role, path, title) => {
    const page = await office.signIn(role, size);
    await page.goto(`/drums${path}`);
    const form = page.getByRole('form', { name: title });
    await form.waitFor();
    await expectInSight(form);
  });

  it('a hold of a batch at seven places: all that follows is in sight above the press', async () => {
    const page = await office.signIn('dispatcher', size);
    await page.goto('/drums?act=hold&batch=J27-041');
    await page.getByText('44 drums, 8,800 L, in 7 places.').waitFor();
    const script = page.getByRole('region', { name: 'Radio script' });
    const [foot, top] = await Promise.all([
      script.evaluate((section) => section.getBoundingClientRect().bottom),
      page.getByRole('form', { name: 'Set the hold' }).evaluate((form) => form.getBoundingClientRect().top),
    ]);
    expect(foot).toBeLessThanOrEqual(top);
  });

  it('a count of no place in particular begins with the place', async () => {
    const page = await office.signIn('storekeeper', size);
    await page.goto('/drums?act=count');
    await page.getByRole('form', { name: 'Count a place' }).waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe(
      await page.getByLabel('Place', { exact: true }).getAttribute('id'),
    );
  });

  it('a count begins with the fuel found', async () => {
    const page = await office.signIn('operations manager', size);
    await page.goto('/caches/XLOR');
    await page.getByRole('button', { name: /^Enter count/ }).waitFor();
    await page.keyboard.press('c');
    await page.getByRole('form', { name: /^Enter count/ }).waitFor();
    await page.keyboard.type('2150');
    expect(await page.getByLabel('Fuel found').inputValue()).toBe('2150');
  });
});
