import { writeFileSync } from 'node:fs';
import { drawChecks } from '@drumline/stock';
import { expect, it } from 'vitest';
import { makePdf } from '../pdf/make-pdf.js';
import { paperSizes } from '../pdf/paper-size.js';
import { printedTexts } from '../testing/printed-texts.js';
import { pageCount } from '../testing/read-pdf.js';
import { slipsOnPage, slipsPage } from './slips.js';

it('a draw slip asks what the phone asks before a drum is pumped, and for a medevac for whom and where', () => {
  const slip = slipsPage({
    kind: 'draw',
    numbers: ['D-1', 'D-2', 'D-3', 'D-4'],
    paper: 'letter',
    programmes: [],
  });
  const words = printedTexts(slip).map(({ text }) => text);
  for (const { id } of drawChecks)
    expect(words.filter((word) => word.toLowerCase() === id)).toHaveLength(slipsOnPage);
  expect(words.filter((word) => word === 'Medevac')).toHaveLength(slipsOnPage);
  expect(words.filter((word) => word.startsWith('for whom or what, and where'))).toHaveLength(slipsOnPage);
});

it.each(paperSizes)('four slips of either kind are one page of %s', async (paper) => {
  const numbers = ['D-1001', 'D-1002', 'D-1003', 'D-1004'];
  const programmes = ['P0', 'P1', 'P2', 'P3', 'P4'];
  for (const kind of ['count', 'draw'] as const) {
    const page = slipsPage({ kind, numbers, paper, programmes });
    const pdf = await makePdf({ title: 'Slips', paper, pages: [page] });
    if (process.env.SHOTS) writeFileSync(`${process.env.SHOTS}/${kind}-${paper}.pdf`, pdf);
    expect([kind, pageCount(pdf)]).toEqual([kind, 1]);
  }
});
