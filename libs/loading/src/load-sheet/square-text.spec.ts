import { kilograms, knots, nauticalMiles, pounds } from '@drumline/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkCode } from './check-code.js';
import { parseSquare } from './parse-square.js';
import type { Square } from './square.js';
import { codeOfSquare, squareText } from './square-text.js';

const square: Square = {
  flight: 'F06',
  version: 3,
  aircraft: 'A1',
  type: 'A',
  date: '2027-06-15',
  departs: '07:10',
  legs: [
    {
      from: 'MER',
      to: 'GAN',
      distanceNm: nauticalMiles(49.1),
      surface: 'dry',
      loadLb: pounds(1581),
      zeroFuelLb: pounds(5831),
      takeoffLb: pounds(6396),
      landingLb: pounds(6255),
      nearest: 'GAN STRIP LANDING LIMIT',
      spareLb: pounds(95),
      leaveLimitLb: pounds(6250),
      tailwindLimitKt: knots(3),
      latestLeave: '18:05',
      committalPoint: '1.1 NM FINAL, AT THE STREAM FORK',
    },
  ],
  drums: [
    {
      number: '0573',
      position: 'R1L',
      batch: 'J27-041',
      grossKg: kilograms(179.8),
      lb: pounds(396),
      offAfterLeg: 0,
    },
    {
      number: '0574',
      position: 'R1R',
      batch: 'J27-041',
      grossKg: kilograms(180.5),
      lb: pounds(398),
      offAfterLeg: 0,
    },
  ],
  cargo: [{ name: 'MAIL/STORES', place: 'NET1', lb: pounds(40), firstLeg: 0, lastLeg: 0 }],
  ifSoft: [
    { leg: 0, take: 1, leave: ['0574'] },
    { leg: 1, take: null, leave: [] },
  ],
};

describe('code square', () => {
  it('is one short text of the signs that a QR code packs best', () => {
    expect(squareText(square)).toBe(
      'DL1/F06/3/A1/A/20270615/0710*' +
        'L/MER/GAN/491/D/1581/5831/6396/6255/GAN STRIP LANDING LIMIT/95/6250/3/1805/1.1 NM FINAL%002C AT THE STREAM FORK*' +
        'D/0573/R1L/J27-041/1798/396/0*D/0574/R1R//1805/398/0*' +
        'C/MAIL%002FSTORES/NET1/40/0/0*S/0/1/0574*S/1//*' +
        codeOfSquare(square),
    );
    expect(squareText(square)).toMatch(/^[0-9A-Z $%*+\-./:]+$/);
  });

  it('is read back as it was written', () => {
    expect(parseSquare(squareText(square))).toEqual({ ok: true, square, checkCode: codeOfSquare(square) });
  });

  it('any text survives, in capitals', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1 }), (name) => {
        const wanted = name.toUpperCase();
        const parsed = parseSquare(squareText({ ...square, cargo: [{ ...square.cargo[0]!, name }] }));
        expect(parsed.ok && parsed.square.cargo[0]!.name).toBe(wanted);
      }),
    );
  });

  it.each([
    ['one digit of a weight', (text: string) => text.replace('6396', '6369'), 'scan or copy it again'],
    ['a record cut off', (text: string) => text.slice(0, 60), 'some of it is missing'],
    ['another text', () => 'HELLO*ABCD', 'no code square of Drumline'],
    ['a newer format', (text: string) => text.replace('DL1', 'DL2'), 'this reads DL1'],
    ['a record nobody knows', (text: string) => text.replace('*C/', '*X/'), 'record "X" is not known'],
    ['a word for a number', (text: string) => text.replace('/3/A1', '/THREE/A1'), 'not a whole number'],
    ['a wrong date', (text: string) => text.replace('20270615', '20271515'), 'no date'],
    ['a wrong time', (text: string) => text.replace('0710', '2510'), 'not a time'],
    ['a wrong surface', (text: string) => text.replace('/D/', '/Q/'), 'surface is "Q"'],
  ] as const)('%s is a clear fault', (_, spoil, words) => {
    const parsed = parseSquare(spoil(squareText(square)));
    expect(parsed.ok).toBe(false);
    expect(!parsed.ok && parsed.fault).toContain(words);
  });

  it('one sign changed anywhere is never read as a good square with other contents', () => {
    const text = squareText(square);
    let slipped = 0;
    for (let at = 0; at < text.length; at++) {
      for (const sign of '0A7') {
        const spoilt = text.slice(0, at) + sign + text.slice(at + 1);
        if (spoilt !== text && parseSquare(spoilt).ok) slipped++;
      }
    }
    // Three signs of 25 let one change in 15,625 pass.
    expect(slipped).toBe(0);
  });
});

describe('check code', () => {
  it('has four signs that handwriting does not mix up', () => {
    expect(codeOfSquare(square)).toMatch(/^[ACDEFGHJKMNPQRTUVWXY34679]{4}$/);
  });

  it('is the same on every machine', () => {
    // Pinned: another code for the same text would make paper that is out there disagree.
    expect(checkCode('DL1/F06/3*', 'F06', 3)).toBe('U9XA');
  });

  it('a new version always has another code', () => {
    const codes = Array.from({ length: 25 }, (_, version) => codeOfSquare({ ...square, version }));
    expect(new Set(codes).size).toBe(25);
  });

  it('hardly ever agrees by chance', () => {
    const codes = Array.from({ length: 2000 }, (_, lb) =>
      codeOfSquare({ ...square, cargo: [{ ...square.cargo[0]!, lb: pounds(lb) }] }),
    );
    // 2,000 of 15,625: about 120 meet by chance; a poor sum would meet far more often.
    expect(2000 - new Set(codes).size).toBeLessThan(200);
  });
});
