import { litres } from '@drumline/units';
import { expect, it } from 'vitest';
import type { DayPack, PackFlight } from '../day-pack/day-pack.js';
import { coverPages } from '../day-pack/day-pack-cover.js';
import { radioScriptPage } from '../day-pack/radio-script.js';
import { demo, fullFlight, sheetOf } from '../testing/example-sheet.js';
import { printedTexts } from '../testing/printed-texts.js';
import { notToLoad } from './not-to-load.js';

const made = sheetOf(demo(), fullFlight);
const heldWords = 'Batch J27-041 is held: water found. Aboard: 0523, 0524.';

const flight = (more: Partial<PackFlight>): PackFlight => ({
  ...{ id: 'F001', aircraft: 'A1', departs: '07:00', pilot: 'FW1', state: 'given', needsDecision: null },
  route: ['XMER', 'XLOR', 'XMER'],
  stops: [{ place: 'XLOR', drums: 2, numbers: ['0523', '0524'] }],
  sheet: made,
  ...more,
});

const packOf = (of: PackFlight): DayPack => ({
  date: '2027-06-14',
  stamp: { at: 'Mon 14 June 2027 06:02', by: 'Demo dispatcher' },
  paper: 'a4',
  flights: [of],
  places: [
    {
      ...{ code: 'XLOR', name: 'Lorne', radioTime: '06:15', hands: null, drumsADay: null },
      ...{ tailwindLimitKt: null, isOneWay: false, surface: 'dry 13 June 18:10', level: 'below minimum' },
      usableLitres: litres(205),
      minimumLitres: litres(1200),
      needsCount: false,
    },
  ],
  ...{ held: [], names: new Map(), silentPeople: [], programmes: [], goods: null },
  slips: { count: ['C-1001'], draw: ['D-1001'] },
});

const said = (pages: Parameters<typeof printedTexts>[0][]): string =>
  pages
    .flatMap((page) => printedTexts(page))
    .map(({ text }) => text)
    .join(' ');

it('a flight with held drums is HOLD in the table, and the radio names none of its drums', () => {
  const pack = packOf(flight({ sheet: { ...made, heldWords } }));
  expect(said([...coverPages(pack)])).toContain('HOLD, do not load: Batch J27-041 is held: water found.');
  const script = said([radioScriptPage(pack)]);
  expect(script).toContain(
    'Foxtrot zero zero one, aircraft Alfa one: hold. Not to be loaded. Base decides and calls again.',
  );
  expect(script).not.toContain('zero five two three');
});

it('a flight that waits for a decision says so, with or without a sheet; another is told with its drums', () => {
  const waits = flight({ needsDecision: 'XLOR is reported soft.', sheet: { why: 'not approved' } });
  expect(said([...coverPages(packOf(waits))])).toContain(
    'Needs a decision, do not load: XLOR is reported soft.',
  );
  expect(said([radioScriptPage(packOf(waits))])).toContain('waits for a decision. Not to be loaded.');
  const goes = packOf(flight({}));
  expect(said([radioScriptPage(goes)])).toContain('two drums: zero five two three, zero five two four; off');
  expect(notToLoad(goes.flights[0]!)).toBeNull();
  expect(notToLoad(flight({ sheet: { ...made, holds: false, faults: ['531 lb over'] } }))).toEqual({
    what: 'Does not hold',
    why: '531 lb over.',
  });
});

it('a reason that two lines of the table do not hold is left to the sheet: a cover is one page', () => {
  const why =
    'F05, Tue 15 Jun, XALD-XLOR: XLOR when soft accepts 7,600 lb landing; this load lands at 8,134 lb.';
  const cover = said([...coverPages(packOf(flight({ needsDecision: why, sheet: made })))]);
  expect(cover).toContain('Needs a decision, do not load: see its sheet.');
  expect(cover).not.toContain('8,134');
});
