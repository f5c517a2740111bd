import { expect, it } from 'vitest';
import { loadSheetPages } from './load-sheet-pages.js';
import { demo, fullFlight, printOf, sheetOf } from './testing/example-sheet.js';
import { printedTexts } from './testing/printed-texts.js';

const scenario = demo();
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
