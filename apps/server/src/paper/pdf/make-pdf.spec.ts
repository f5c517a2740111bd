import { expect, it } from 'vitest';
import { drawn, pageCount } from '../testing/read-pdf.js';
import { makePdf } from './make-pdf.js';

/** Every sign of a page by its number in the font; 0000 stands for one that the font does not have. */
const signsOf = (pdf: Buffer): readonly string[] =>
  [...drawn(pdf).matchAll(/^\[(.*)\] TJ$/gm)].flatMap(([, shown]) =>
    [...shown!.matchAll(/<([0-9a-f]+)>/g)].flatMap(([, hex]) => hex!.match(/.{4}/g) ?? []),
  );
const print = (text: string) => makePdf({ title: 'Accents', paper: 'a4', pages: [{ text }] });

it('accents are in the font: none is left out', { timeout: 60_000 }, async () => {
  const signs = signsOf(await print('Ærø Łódź Þórshöfn Žďár Çeşme Ñuñoa − ’ ×'));
  expect(signs.length).toBeGreaterThan(35);
  expect(signs).not.toContain('0000');
  expect(signsOf(await print('\u4e00'))).toContain('0000');
});

it('each page begins on new paper', { timeout: 60_000 }, async () => {
  const pages = [{ text: 'one' }, { text: 'two' }, { text: 'three' }];
  expect(pageCount(await makePdf({ title: 'Three', paper: 'letter', pages, foot: 'Three' }))).toBe(3);
});
