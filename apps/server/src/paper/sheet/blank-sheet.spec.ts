import { expect, it } from 'vitest';
import { makePdf } from '../pdf/make-pdf.js';
import { paperSizes } from '../pdf/paper-size.js';
import { demo } from '../testing/example-sheet.js';
import { printedTexts } from '../testing/printed-texts.js';
import { pageCount } from '../testing/read-pdf.js';
import { blankSheetPage } from './blank-sheet.js';

const goods = demo().dangerousGoods!;
const words = () =>
  printedTexts(blankSheetPage('letter', goods))
    .map(({ text }) => text)
    .join(' ');

it.each(paperSizes)('a sheet to fill in by hand is one page of %s', async (paper) => {
  for (const set of [goods, null])
    expect(pageCount(await makePdf({ title: 'By hand', paper, pages: [blankSheetPage(paper, set)] }))).toBe(
      1,
    );
});

it('has a place for what a printed sheet says: version, check code, go-back lines, tie-down', () => {
  for (const part of ['Version _', 'check code', 'Go back if', 'tailwind more than _', 'If soft: take _'])
    expect(words().replaceAll('\n', ' ')).toContain(part);
  expect(words()).toMatch(/Each drum tied: +straps _+ forward/);
});

it('has the operator’s own fields of dangerous goods: what is always so is printed, the rest is written in', () => {
  expect(words()).toMatch(/UN number +UN 1863/);
  expect(words()).toMatch(/Packages +_+/);
  expect(words()).toContain(goods.emergencyContact);
  // Drum numbers stand in the rows above.
  expect(words()).not.toMatch(/Drums +_/);
});
