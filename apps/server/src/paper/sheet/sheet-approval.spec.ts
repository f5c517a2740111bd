import { writeFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { makePdf } from '../pdf/make-pdf.js';
import { paperSizes } from '../pdf/paper-size.js';
import { demo, fullFlight, loadOf, printOf, sheetOf } from '../testing/example-sheet.js';
import { printedTexts } from '../testing/printed-texts.js';
import { pageCount } from '../testing/read-pdf.js';
import { loadSheetPages } from './load-sheet-pages.js';

const scenario = demo();

/** The full flight, and all of one batch aboard it held. */
const heldSheet = () => {
  const { batch } = loadOf(scenario, fullFlight).drums[0]!;
  const held = { reason: 'water found', by: 'fuel quality', at: scenario.asOf };
  const batches = scenario.batches.map((each) => (each.id === batch ? { ...each, held } : each));
  return sheetOf({ ...scenario, batches }, fullFlight);
};
const sheet = sheetOf(scenario, fullFlight);
const said = (of: typeof sheet): string =>
  loadSheetPages(of, printOf(scenario, 'a4'))
    .flatMap((page) => printedTexts(page))
    .map(({ text }) => text)
    .join(' ')
    .replace(/\s+/g, ' ');

it('a sheet that nobody has approved says so in place of the version that it would replace', () => {
  const offered = said({ ...sheet, flight: { ...sheet.flight, notApproved: true } });
  expect(offered).toContain('NOT APPROVED. Offered, version 3. Do not load by this sheet.');
  expect(offered).not.toContain('throw version 2 away');
  expect(said(sheet)).not.toContain('NOT APPROVED');
  expect(said(sheet)).toContain('throw version 2 away');
});

it('a sheet by which nobody may load has nothing to sign', () => {
  const notHolding = said({ ...sheet, holds: false, faults: ['531 lb over'] });
  const offered = said({ ...sheet, flight: { ...sheet.flight, notApproved: true } });
  for (const words of [notHolding, offered]) {
    expect(words).toContain('Nothing to sign: nobody loads by this sheet.');
    expect(words).not.toContain('Commander time');
  }
  expect(said(sheet)).toContain('Commander time');
});

it.each(paperSizes)(
  'a sheet with held drums says HOLD at each of them and has nothing to sign, on one page of %s',
  async (paper) => {
    const of = heldSheet();
    const held = of.drums.filter(({ onHold }) => onHold);
    expect(held.length).toBeGreaterThan(0);
    const words = said(of);
    expect(words).toContain(
      `HOLD. Do not load by this sheet. Batch ${held[0]!.batch} is held: water found. Aboard:`,
    );
    expect(words.match(/HOLD: do not load, do not use/g)).toHaveLength(held.length);
    expect(words).toContain('Nothing to sign: nobody loads by this sheet.');
    expect(words).not.toContain('Commander time');
    const pages = loadSheetPages(of, printOf(scenario, paper));
    const pdf = await makePdf({ title: 'Load sheet', paper, pages });
    if (process.env.SHOTS) writeFileSync(`${process.env.SHOTS}/held-${paper}.pdf`, pdf);
    expect(pageCount(pdf)).toBe(1);
  },
  60_000,
);

it('the surfaces stand with the time of their report, beside those that are planned on', () => {
  expect(sheet.assumptions).toMatch(
    /^Heard: XLOR dry 14 June 05:50, XALD dry 14 June 05:30\. Planned on: XALD dry, XLOR dry;/,
  );
  const saddle = sheetOf(scenario, {
    ...fullFlight,
    ...{ id: 'F06', aircraft: 'A1', from: 'XMER', to: 'XMER' },
    stops: [{ place: 'XGAN', drums: 4 }],
  });
  expect(saddle.assumptions).toContain('XGAN unknown, XMER dry 14 June 05:40; unknown counts as soft.');
});
