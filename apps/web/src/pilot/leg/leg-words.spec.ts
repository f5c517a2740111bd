import type { SurfaceState } from '@drumline/network';
import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { exampleDay, exampleFlight } from '../testing/example-flight.js';
import { goBackWords } from './go-back-words.js';
import { legWords, stripWords, surfaceAt } from './leg-words.js';
import { tooManyFor } from './soft-rule.js';

const xgan = exampleDay.places[0]!;

describe('the words of a leg', () => {
  const words = legWords(exampleFlight, 0)!;

  it('name the drums aboard; on the way home there are none', () => {
    expect(words.drums).toEqual(['0434', '0435', '0437']);
    expect(legWords(exampleFlight, 1)!.drums).toEqual([]);
  });

  it('say tailwind, committal point, and what a soft strip takes off', () => {
    expect(words.goBack.main).toBe('Tailwind more than 3 kt');
    expect(words.goBack.rest.join(' ')).toContain('Decide by 1.1 NM final, at the stream fork');
  });

  it('let the heavier of plan and named drums decide whether to unload or stay', () => {
    expect(words.leave!.over).toBe(false);
    const stop = exampleFlight.stops[0]!;
    const heavy = { ...stop, planned: { arrivalLb: pounds(7911), overLb: pounds(11) } };
    const leave = legWords({ ...exampleFlight, stops: [heavy] }, 0)!.leave!;
    expect(leave).toMatchObject({ over: true, main: 'Stay: 11 lb too heavy, dry' });
    expect(leave.rest[0]).toContain('7,911 lb, take-off limit 7,900 lb dry');
    expect(leave.rest[1]).toMatch(/: .* lb, .* spare$/);
  });

  it('tell the soft landing only where it would be nearer than the limit that binds', () => {
    const { sheet } = exampleFlight;
    const [leg, ...others] = sheet!.legs;
    const withSpare =
      (beginning: string, end: string, spareLb: number) => (row: NonNullable<typeof leg>['rows'][number]) =>
        row.label.startsWith(beginning) && row.label.endsWith(end)
          ? { ...row, limit: { lb: pounds(8000), spareLb: pounds(spareLb), holds: spareLb >= 0 } }
          : row;
    const told = (softLb: number) => {
      const rows = leg!.rows
        .map(withSpare('take-off ', '', 20))
        .map(withSpare('land ', '', 700))
        .map(withSpare('land ', ', soft', softLb));
      const flight = { ...exampleFlight, sheet: { ...sheet!, legs: [{ ...leg!, rows }, ...others] } };
      return legWords(flight, 0)!.binds.rest;
    };
    expect(told(100)).not.toContain('soft');
    expect(told(-80)).toContain('landing soft: 80 lb over');
    const rows = leg!.rows.map(withSpare('land ', ', soft', -80));
    const flight = { ...exampleFlight, sheet: { ...sheet!, legs: [{ ...leg!, rows }, ...others] } };
    // Reported soft, or unknown: that is what binds.
    expect(legWords(flight, 0, true)!.binds.main).toBe('XGAN landing, soft');
    expect(legWords(flight, 0, true)!.binds.rest).toMatch(/^80 lb over · /);
  });

  it('on the way home say where else to land, never to go back to the strip', () => {
    const { goBack } = legWords(exampleFlight, 1)!;
    expect(goBack).toMatchObject({
      of: 'If XMER closes',
      main: 'No alternate within fuel and limits',
    });
    expect(goBack.rest[0]).toBe('Hear from XMER before you leave XGAN');
  });

  it('are none without a sheet', () => {
    expect(legWords({ ...exampleFlight, sheet: null }, 0)).toBeNull();
  });
});

describe('the surface as it counts now', () => {
  const report = { place: 'XGAN', state: 'dry' as const, at: '2027-06-15T05:35Z', by: 'strip helper' };
  const at = (clock: string) =>
    surfaceAt(exampleDay, [report], { code: 'XGAN', now: new Date(`2027-06-15T${clock}:00Z`) });

  it('is the last report while that is fresh, then unknown; the report is still named', () => {
    expect(at('06:00').state).toBe('dry');
    expect(at('12:00')).toEqual({ state: null, report });
    expect(surfaceAt(exampleDay, [], { code: 'XGAN', now: new Date() })).toEqual({
      state: null,
      report: null,
    });
  });
});

it('a strip is told with its length, slope, and that it is one-way', () => {
  expect(stripWords(xgan)).toBe('1,250 ft, earth, 8 % slope, one-way.');
});

describe('where soft counts', () => {
  it('to go back for, those aboard count, with what is for stops after it', () => {
    const [leg] = exampleFlight.sheet!.legs;
    const ifSoft = { ...leg!.goBack.ifSoft!, take: 0, leave: ['0434'] };
    const words = (onward: number) => goBackWords({ ...leg!, goBack: { ...leg!.goBack, ifSoft } }, onward);
    expect(words(4).rest[0]).toBe('Closed, or soft with more than 4 drums aboard');
    expect(words(1).rest[0]).toBe('Closed, or soft with more than 1 drum aboard');
  });

  it('at one of two stops, it says which drums are meant and gives up the other stop for nothing', () => {
    const [stop] = exampleFlight.stops;
    const other = { ...stop!, place: 'XLOR', drums: ['0440'], drumsIfSoft: 1 };
    const two = { ...exampleFlight, stops: [stop!, other] };
    const words = (xgan: SurfaceState, drumsIfSoft: number | null = 2) =>
      tooManyFor({ ...two, stops: [{ ...stop!, drumsIfSoft }, other] }, (code) =>
        code === 'XGAN' ? xgan : 'dry',
      ).map((each) => each.words);
    expect(words('soft')).toEqual([
      'XGAN is soft: 2 drums for XGAN may go, 3 are aboard for it. What is for other stops may go: 1 for XLOR.',
    ]);
    expect(words('soft', 0)[0]).toContain('XGAN is soft: no drum for XGAN may go, 3 are aboard for it.');
    const not = 'do not go by this version; 1 drum for XLOR needs another, without XGAN.';
    expect(words('soft', null)).toEqual([`XGAN is soft: ${not}`]);
    expect(words('closed')).toEqual([`XGAN is reported closed: ${not}`]);
    expect(tooManyFor(exampleFlight, () => 'closed')[0]!.words).toBe('XGAN is reported closed: do not go.');
  });

  it('unload or stay has the soft figure first, by its name, and the dry one after it', () => {
    const stop = exampleFlight.stops[0]!;
    const heavy = { ...stop, planned: { arrivalLb: pounds(7911), overLb: pounds(11) } };
    const leave = legWords({ ...exampleFlight, stops: [heavy] }, 0, true)!.leave!;
    // 7,911 less (7,900 less 500 when soft).
    expect(leave.main).toBe('Stay: 511 lb too heavy, soft');
    expect(leave.rest.at(-1)).toBe('If dry: 11 lb over');
  });

  it('more drums than soft takes wait, and the sheet says which stays behind; a fresh dry report lets them go', () => {
    const [tooMany] = tooManyFor(exampleFlight, () => null);
    expect(tooMany).toMatchObject({ place: 'XGAN', aboard: 3, mayGo: 2 });
    expect(tooMany!.words).toBe('No report of XGAN is fresh, so soft counts: 2 drums may go, 3 are aboard.');
    expect(tooManyFor(exampleFlight, () => 'soft')[0]!.words).toContain('XGAN is soft');
    expect(tooManyFor(exampleFlight, () => 'dry')).toEqual([]);
    expect(tooManyFor(exampleFlight, () => 'closed')[0]!.mayGo).toBeNull();
  });
});
