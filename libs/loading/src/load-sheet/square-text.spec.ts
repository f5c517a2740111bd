import { kilograms } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { exampleLoad, standing } from '../named-load/example-load.js';
import type { NamedLoad } from '../named-load/named-load.js';
import { checkCode } from './check-code.js';
import { exampleSheetRequest, sheetOf } from './example-sheet.js';
import { makeLoadSheet } from './make-load-sheet.js';
import { readSquareCode } from './square-text.js';

const load: NamedLoad = {
  ...exampleLoad(['BASE', 'NEAR', 'BASE'], []),
  drums: [standing('0434', 'R1L'), standing('0435', 'R1R')],
};
const sheet = sheetOf(load);
const lines = sheet.square.split('\n');

describe('the code square', () => {
  it('is plain words with their units: whose it is, each drum, weights with limits, and every line of the sheet', () => {
    expect(lines[0]).toBe('F05 V3 B1 2027-06-15 OFF 07:10 PILOT FW3');
    expect(lines[1]).toMatch(/^R1L 0434 \d+\.\d KG \d+ LB$/);
    for (const { label, lb, limit, kind } of sheet.legs[0]!.rows)
      if (kind === 'sum')
        expect(sheet.square).toContain(
          `${label.replace(',', ' -').toUpperCase()} ${lb} LB LIMIT ${limit!.lb} SPARE ${limit!.spareLb}`,
        );
    const letters = (text: string) => text.toUpperCase().replace(/[^A-Z0-9:.]/g, '');
    for (const line of sheet.legs[0]!.goBack.lines)
      expect(lines.map((one) => letters(one).replaceAll(':', ''))).toContain(
        letters(line).replaceAll(':', ''),
      );
    expect(lines).toContain(`CHECK CODE ${sheet.checkCode}`);
  });

  it('is of the signs that a code square packs best, line by line', () => {
    for (const line of lines) expect(line).toMatch(/^[0-9A-Z $%*+\-./:]+$/);
  });

  it('says that a load does not hold', () => {
    const heavy = load.drums.map((drum) => ({ ...drum, grossKg: kilograms(900) }));
    expect(sheetOf({ ...load, drums: heavy }).square).toContain('THIS LOAD DOES NOT HOLD');
  });

  it('says what is left out where it would get too fine to read', () => {
    const name = 'tents, stoves and a generator for the camp at the far end of the lake ';
    const cargo = Array.from({ length: 12 }, (_, at) => ({
      name: `${name}${at}`,
      weightLb: load.request.type.taxiFuelLb,
      place: 'NET',
      firstLeg: 0,
      lastLeg: 0,
    }));
    expect(sheetOf({ ...load, cargo }).square).toContain('LEFT OUT HERE: ALTERNATES. SEE THE SHEET.');
    expect(sheet.square).not.toContain('LEFT OUT');
  });

  it('keeps its code when only the room at alternates is another', () => {
    const [out] = load.request.legs;
    const strip = (roomDrums: number) => ({
      end: out!.from,
      isSurfaceUnknown: false,
      distanceNm: out!.distanceNm,
      homeNm: out!.distanceNm,
      isBase: false,
      roomDrums,
      whyNot: null,
    });
    const withRoom = (room: number) =>
      makeLoadSheet({ ...exampleSheetRequest(load), alternates: [[strip(room)], []] });
    expect(withRoom(9).square).not.toBe(withRoom(8).square);
    expect(withRoom(9).checkCode).toBe(withRoom(8).checkCode);
  });

  it.each([
    ['one digit of a weight', (text: string) => text.replace('07:10', '07:40'), 'scan it again'],
    ['a line cut off', () => lines.slice(0, 3).join('\n'), 'some of it is missing'],
    ['another text', () => 'HELLO', 'no code square of a load'],
  ] as const)('%s is a clear fault', (_, spoil, words) => {
    const read = readSquareCode(spoil(sheet.square));
    expect(!read.ok && read.fault).toContain(words);
  });

  it('one sign changed in what its code covers is never read as good', () => {
    const covered = sheet.square.slice(0, sheet.square.indexOf('CHECK CODE'));
    let slipped = 0;
    for (let at = 0; at < covered.length; at++)
      for (const sign of '0A7') {
        const spoilt = sheet.square.slice(0, at) + sign + sheet.square.slice(at + 1);
        if (spoilt !== sheet.square && readSquareCode(spoilt).ok) slipped++;
      }
    // Three signs of 25 let one change in 15,625 pass.
    expect(slipped).toBe(0);
  });
});

describe('check code', () => {
  it('has four signs that handwriting does not mix up', () => {
    expect(sheet.checkCode).toMatch(/^[ACDEFGHJKMNPQRTUVWXY34679]{4}$/);
  });

  it('is the same on every machine', () => {
    // Pinned: another code for the same text would make paper that is out there disagree.
    expect(checkCode('DL1/F06/3*', 'F06', 3)).toBe('U9XA');
  });

  it('a new version always has another code', () => {
    const request = exampleSheetRequest(load);
    const codes = Array.from(
      { length: 25 },
      (_, version) =>
        makeLoadSheet({ ...request, flight: { ...request.flight, version: version + 1 } }).checkCode,
    );
    expect(new Set(codes).size).toBe(25);
  });

  it('hardly ever agrees by chance', () => {
    const codes = Array.from({ length: 2000 }, (_, lb) => checkCode(`F05 LOAD ${lb} LB`, 'F05', 1));
    // 2,000 of 15,625: about 120 meet by chance; a poor sum would meet far more often.
    expect(2000 - new Set(codes).size).toBeLessThan(200);
  });
});
