import { pounds, print } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { exampleLoad, standing } from '../named-load/example-load.js';
import { payloadBars } from '../named-load/payload-bar.js';
import { exampleSheetRequest, sheetOf } from './example-sheet.js';
import { makeLoadSheet } from './make-load-sheet.js';

describe('a load sheet', () => {
  const load = exampleLoad(['BASE', 'NEAR', 'BASE'], []);

  it('a passenger and a drum on one leg are refused on the sheet', () => {
    const withPassenger = {
      ...load.request,
      legs: load.request.legs.map((leg) => ({ ...leg, passengers: 1 })),
    };
    const drum = standing('0447', 'R1L');
    const sheet = sheetOf({ ...load, request: withPassenger, drums: [drum] });
    expect(sheet.holds).toBe(false);
    expect(sheet.faults).toContain(
      'BASE-NEAR: 1 passenger and 1 drum are refused (manual 8.2). Only an approval of the authority on file sets this aside.',
    );
  });

  it('cargo without a place has no centre of gravity, and that is a fault', () => {
    const cargo = [{ name: 'stores', weightLb: pounds(100), place: null, firstLeg: 0, lastLeg: 0 }];
    const sheet = sheetOf({ ...load, cargo });
    expect(sheet.holds).toBe(false);
    expect(sheet.legs[0]!.rows.every(({ cg }) => cg === null)).toBe(true);
    expect(sheet.legs[1]!.rows.some(({ cg }) => cg !== null)).toBe(true);
  });

  it('a surface that nobody knows counts as soft: the nearest weight says what is spare by both', () => {
    const there = exampleLoad(['BASE', 'STRIP', 'BASE'], [standing('0447', 'R1L')]);
    const request = exampleSheetRequest(there);
    const bindsOf = (heard: string) =>
      makeLoadSheet({ ...request, surfacesHeard: { STRIP: heard } }).legs[0]!.binds;
    const rows = sheetOf(there).legs[0]!.rows;
    const spareOf = (label: string) => rows.find((row) => row.label === label)!.limit!.spareLb;
    // 1,923 lb when soft are less than the five free places leave: the limit that Load and the decision card name too.
    expect(bindsOf('unknown')).toContain(
      `Nearest limit: STRIP strip landing limit, ${print(spareOf('land STRIP, dry'), 'lb')} spare dry, ${print(spareOf('land STRIP, soft'), 'lb')} spare soft.`,
    );
    expect(bindsOf('dry 14 June 05:58')).toBe(sheetOf(there).legs[0]!.binds);
  });

  it('a new version says which one to throw away', () => {
    expect(sheetOf(load).replacesWords).toBe('Version 3 replaces version 2: throw version 2 away.');
    const request = exampleSheetRequest(load);
    const first = makeLoadSheet({ ...request, flight: { ...request.flight, version: 1, replaces: null } });
    expect(first.replacesWords).toBeNull();
    expect(first.checkCode).not.toBe(sheetOf(load).checkCode);
  });

  it('what became known since a print of the same version: the new code replaces the printed one', () => {
    const request = exampleSheetRequest(load);
    const { checkCode } = sheetOf(load);
    const of = (version: number, replaces: number | null, printedCodes: readonly string[]) =>
      makeLoadSheet({ ...request, flight: { ...request.flight, version, replaces, printedCodes } });
    const printed = of(1, null, ['CN3V']);
    expect(printed.replacesWords).toBe(`Version 1, now code ${printed.checkCode}: throw code CN3V away.`);
    expect(of(3, 2, [checkCode, 'CN3V', 'A4C7']).replacesWords).toBe(
      `Version 3, now code ${checkCode}: throw version 2 and code CN3V, code A4C7 away.`,
    );
    expect(of(1, null, [printed.checkCode]).replacesWords).toBeNull();
    // Prints are no part of what a sheet says: its code stays.
    expect(of(3, 2, ['CN3V']).checkCode).toBe(checkCode);
  });

  it('a drum that is held stands on it as held, with why; the code is another than before the hold', () => {
    const drums = [standing('0523', 'R1L'), standing('0524', 'R1R'), standing('0447', 'R2L')];
    const held = drums.map((drum) =>
      drum.number === '0447' ? drum : { ...drum, held: 'Batch J27-041 is held: water found.' },
    );
    const [before, now] = [drums, held].map((each) => sheetOf({ ...load, drums: each }));
    expect([before!.heldWords, before!.holds, now!.holds]).toEqual([null, true, true]);
    expect(now!.heldWords).toBe('Batch J27-041 is held: water found. Aboard: 0523, 0524.');
    expect(now!.drums.map(({ number, onHold }) => [number, onHold])).toEqual([
      ['0523', true],
      ['0524', true],
      ['0447', false],
    ]);
    expect(now!.square).toContain('\nHOLD. DO NOT LOAD BY IT: 0523 0524\n');
    expect(now!.checkCode).not.toBe(before!.checkCode);
    const [bar] = payloadBars({ ...load, drums: held });
    expect(bar!.load.map(({ name, onHold }) => [name, onHold])).toEqual([
      ['0523', true],
      ['0524', true],
      ['0447', undefined],
    ]);
  });

  it('counts straps by the heaviest drum, and says where the figures are entered when there are none', () => {
    const rating = {
      figure: 'ultimate load in an aircraft',
      ultimateLb: pounds(5000),
      reference: 'approval 1',
    } as const;
    const setting = {
      type: 'every type',
      factors: { forward: 9, aft: 1.5, sideways: 1.5, up: 3, reference: 'manual 4' },
      kit: {
        strap: rating,
        fitting: rating,
        floorRing: rating,
        angles: { aboveFloorDeg: 30, offAxisDeg: 30 },
      },
    };
    const request = exampleSheetRequest(load);
    expect(makeLoadSheet({ ...request, tieDown: setting }).tieDown).toBeNull();
    const loaded = { ...load, drums: [standing('0447', 'R1L')] };
    const counted = makeLoadSheet({ ...request, load: loaded, tieDown: setting }).tieDown!;
    expect(counted.words).toMatch(/^Each drum: Straps for \d+ lb: 1 forward/);
    expect(counted.caution).toContain('approved loading manual decides');
    const none = makeLoadSheet({ ...request, load: loaded }).tieDown!;
    expect(none.counted).toBeNull();
    expect(none.words).toMatch(/^No straps are counted: .* Set-up, Tie-down\.$/);
    expect(none.caution).toContain('approved loading manual decides');
  });

  it('has the operator’s own particulars, or the usual ones with a word that they are not the operator’s', () => {
    const request = exampleSheetRequest({ ...load, drums: [standing('0447', 'R1L')] });
    const usual = makeLoadSheet(request);
    expect(usual.particularsMissing).toContain('Set-up, Dangerous goods');
    expect(usual.legs[0]!.particulars.at(-1)).toEqual({ label: 'Emergency contact', value: null });
    const set = {
      reference: 'manual 9.1',
      packaging: 'steel drum',
      emergencyContact: 'desk 0000',
      fields: [{ label: 'Call', value: { from: 'emergency contact' } }] as const,
    };
    const own = makeLoadSheet({ ...request, goods: { ...request.goods, set } });
    expect(own.particularsMissing).toBeNull();
    expect(own.legs[0]!.particulars).toEqual([{ label: 'Call', value: 'desk 0000' }]);
  });

  it('a drum in a position that the cabin does not have is a bug of the caller', () => {
    const drum = standing('0447', 'R9');
    expect(() => sheetOf({ ...load, drums: [drum] })).toThrow('no drum position R9');
  });
});
