import { execFileSync } from 'node:child_process';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openOffice } from './testing/open-office.js';
import { printed } from './testing/printed.js';

const office = openOffice({ own: true });

const open = async (path: string, heading: string): Promise<Page> => {
  const page = await office.signIn('dispatcher');
  await page.goto(path);
  await page.getByRole('heading', { level: 1, name: heading }).waitFor();
  return page;
};

/** What stands on it, read by a program that has nothing to do with the one that made it. */
const textOf = (pdf: Buffer): string =>
  execFileSync('pdftotext', ['-layout', '-', '-'], { input: pdf, encoding: 'utf8' });

it.each([
  ['count', 'Drums', '/drums', 'Counted by'],
  ['draw', 'Drums', '/drums', 'Drawn by'],
  ['count', 'Radio and paper', '/morning/paper', 'Damaged, numbers'],
  ['draw', 'Radio and paper', '/morning/paper', 'Drum rejected, X, no.'],
])('four %s slips are printed from %s, as a PDF that opens', async (kind, heading, path, words) => {
  const page = await open(path, heading);
  const slips = await printed(page, () => page.getByRole('link', { name: `Print ${kind} slips` }).click());
  expect(slips.begins).toBe('%PDF-');
  expect(slips.name).toMatch(/\.pdf$/);
  const text = textOf(slips.content);
  expect(text.split(words)).toHaveLength(5);
  const [first, ...others] = [...text.matchAll(/typed in by/g)];
  expect([first, ...others]).toHaveLength(4);
});

it('the board of a cache is printed from its card, in large figures, as a PDF that opens', async () => {
  const page = await open('/caches/XLOR', 'Caches');
  const board = await printed(page, () => page.getByRole('link', { name: 'Print board of XLOR' }).click());
  expect(board.begins).toBe('%PDF-');
  expect(textOf(board.content)).toContain('XLOR');
});

it('the day pack has the radio script with its boxes to read back, as a PDF that opens', async () => {
  const page = await open('/morning', 'Morning');
  const pack = await printed(page, () => page.getByRole('link', { name: 'Print day pack' }).click());
  expect(pack.begins).toBe('%PDF-');
  expect(textOf(pack.content)).toMatch(/Radio script/);
});

it('the radio scripts of a hold are printed before it is set, each place with room for who read it back', async () => {
  const page = await open('/drums', 'Drums');
  await page.keyboard.press('h');
  await page.getByRole('combobox', { name: 'Batch to hold' }).fill('J27-041');
  await page.getByRole('option', { name: /^J27-041/ }).waitFor();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.evaluate(() => {
    window.print = () => {};
  });
  await page.getByRole('button', { name: /^Print all \d+ scripts/ }).click();
  const pdf = await page.pdf({ preferCSSPageSize: true });
  expect(pdf.subarray(0, 5).toString('latin1')).toBe('%PDF-');
  const text = textOf(pdf);
  expect(text).toContain('Radio scripts: hold of');
  expect(text).toMatch(/XLOR: Batch J27-041 is held\. Do not use or load 6\s+drums/);
  expect(text.split('Numbers read back, by').length - 1).toBe(text.split('Read out at, by').length - 1);
});

const pagesOf = (pdf: Buffer): readonly string[] => textOf(pdf).split('\f').slice(0, -1);

it('the strips of the morning stand whole on paper, every one with its drums a day', async () => {
  const page = await open('/morning', 'Morning');
  const strips = page.getByRole('table', { name: 'Strips: surface, report, limits, drums today' });
  await strips.waitFor();
  const places = (await strips.getByRole('columnheader').allTextContents()).slice(1);
  expect(places.length).toBeGreaterThan(10);
  const text = textOf(await page.pdf({ format: 'A4' }));
  for (const place of places) expect(text).toMatch(new RegExp(`^ *${place} .* \\d+ of \\d+$`, 'm'));
});

it('the caches on paper: every heading with its rows, every cache with cover and count', async () => {
  const page = await open('/caches', 'Caches');
  await page.getByRole('combobox', { name: 'Order' }).waitFor();
  const pages = pagesOf(await page.pdf({ preferCSSPageSize: true }));
  const withHeading = (heading: string) => pages.find((each) => each.includes(heading)) ?? '';
  expect(withHeading('Minimum, cover and count')).toMatch(/XLOR +1,200 L +[\d,]+ L +600 L/);
  expect(withHeading('What lands, what is drawn')).toMatch(/XLOR .*P3 H2/);
});

it('an open dialog is printed whole and alone: fuel for a medevac, every place of it', async () => {
  const page = await open('/morning', 'Morning');
  await page.getByText('then the first due').waitFor();
  await page.keyboard.press('m');
  await page.getByRole('table', { name: 'Where fuel can be drawn now' }).waitFor();
  const text = textOf(await page.pdf({ format: 'A4' }));
  expect(text).toContain('Medevac: fuel now');
  expect(text).toMatch(/At the bases/);
  expect(text).toMatch(/XALD .*drums fit/);
  expect(text).not.toContain('Decide now');
});

it('from a dark room the paper is white, and words on a solid band are white too', async () => {
  const page = await open('/morning', 'Morning');
  await page.evaluate(() => {
    document.documentElement.dataset.ground = 'dim';
  });
  await page.emulateMedia({ media: 'print' });
  const inks = await page.evaluate(() => {
    const style = getComputedStyle(document.documentElement);
    const of = (name: string) => style.getPropertyValue(name).trim();
    return { scheme: style.colorScheme, band: of('--plum'), words: of('--on-solid') };
  });
  expect(inks.scheme).toBe('light');
  expect(inks.band).not.toBe(inks.words);
});

it('what a hold would do is printed on one page, without the list of all drums', async () => {
  const page = await open('/drums?act=hold&batch=J27-041', 'Drums');
  await page.getByRole('button', { name: /^Print all \d+ scripts/ }).waitFor();
  const pages = pagesOf(await page.pdf({ format: 'A4' }));
  expect(pages).toHaveLength(1);
  expect(pages[0]).toContain('Hold batch J27-041');
  expect(pages[0]).not.toContain('All drums');
});

it('a drum is printed by itself, on one page, in line with the title', async () => {
  const page = await open('/drums/0514', 'Drums');
  await page.getByRole('article', { name: 'Drum 0514' }).getByRole('listitem').first().waitFor();
  const pages = pagesOf(await page.pdf({ format: 'A4' }));
  expect(pages).toHaveLength(1);
  expect(pages[0]).toContain('0514');
  expect(pages[0]).not.toContain('All drums');
  await page.emulateMedia({ media: 'print' });
  const lefts = await page.evaluate(() =>
    ['h1', '.drums-card'].map((part) => document.querySelector(part)!.getBoundingClientRect().left),
  );
  expect(lefts[1]).toBe(lefts[0]);
});
