import { describe, expect, it } from 'vitest';
import { openOffice } from './testing/open-office.js';

const office = openOffice();

const forms = [
  ['operations manager', 'c', /^Enter count/],
  ['operations manager', 'p', /^Change task or sling/],
  ['operations manager', 'm', /^Change minimum/],
  ['dispatcher', 'd', /^Add draw/],
] as const;

describe.each([
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
])('at $width', (size) => {
  it.each(forms)('the form that %s opens by %s stands whole in its column', async (role, key, title) => {
    const page = await office.signIn(role, size);
    await page.goto('/caches/XLOR');
    await page.getByRole('button', { name: title }).waitFor();
    await page.keyboard.press(key);
    const form = page.getByRole('form', { name: title });
    await form.waitFor();
    const [wide, room] = await form.evaluate((element) => [element.scrollWidth, element.clientWidth]);
    expect(wide).toBeLessThanOrEqual(room);
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
