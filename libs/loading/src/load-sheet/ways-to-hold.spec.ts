import { inches, kilograms, pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { exampleRequest, exampleType } from '../example-flight.js';
import { exampleLoad, standing } from '../named-load/example-load.js';
import type { StandingDrumAboard } from '../named-load/named-load.js';
import type { DrumAsLoaded } from './as-loaded.js';
import { exampleSheetRequest } from './example-sheet.js';
import { makeLoadSheet } from './make-load-sheet.js';
import { waysToHold } from './ways-to-hold.js';

const there = ['BASE', 'STRIP', 'BASE'];

/** The ways for these drums on an aeroplane of the example type with other limits; it does not hold as it stands. */
const waysFor = (drums: readonly (StandingDrumAboard & { planned?: string })[], limits: object = {}) => {
  const route = { ...exampleRequest(there), type: { ...exampleType, ...limits } };
  const request = exampleSheetRequest(exampleLoad(there, drums, route));
  const aboard = drums.map((drum): DrumAsLoaded => ({ ...drum, planned: drum.planned ?? drum.number }));
  expect(makeLoadSheet(request).holds).toBe(false);
  return { ways: waysToHold(request, aboard), request };
};
const left = ({ leave }: ReturnType<typeof waysToHold>) =>
  leave.map((off) => off.map(({ number }) => number));

const heavy = (number: string, position: string, planned = number) => ({
  ...standing(number, position),
  grossKg: kilograms(240),
  planned,
});

describe('ways to hold', () => {
  // 240 kg is 529 lb; a place of the example cabin takes 450 lb.
  it('a drum too heavy for every place is left; nothing is gained by moving it', () => {
    const { ways } = waysFor([heavy('0913', 'R1L'), standing('0435', 'R1R')]);
    expect(ways.move).toBeNull();
    expect(left(ways)).toEqual([['0913']]);
  });

  it('of single drums two at most, one that was not planned first', () => {
    const three = [
      standing('0434', 'R1L'),
      standing('0435', 'R1R'),
      { ...standing('0436', 'R2L'), planned: '0437' },
    ];
    // Three drums of 397 lb are aboard; two may be.
    const { ways } = waysFor(three, { maxZeroFuelLb: pounds(4500 + 2 * 397) });
    expect(left(ways)).toEqual([['0436'], ['0434']]);
  });

  it('where none will do alone the heaviest go one after the other, and the last drum stays', () => {
    const { ways } = waysFor([heavy('0911', 'R1L'), standing('0435', 'R1R'), heavy('0912', 'R2L')]);
    expect(left(ways)).toEqual([['0911', '0912']]);
    expect(left(waysFor([heavy('0911', 'R1L'), heavy('0912', 'R1R')]).ways)).toEqual([]);
  });

  it('drums too far aft go forward, and the load then holds with every one of them', () => {
    const armOf = (positions: readonly string[]) => {
      const drums = positions.map((position, at) => standing(`${at}`, position));
      const sheet = makeLoadSheet(exampleSheetRequest(exampleLoad(there, drums)));
      return Math.max(...sheet.legs[0]!.rows.flatMap(({ cg }) => cg?.armIn ?? []));
    };
    const between = (armOf(['R1L', 'R1R']) + armOf(['R3L', 'R3R'])) / 2;
    const envelope = exampleType.envelope.map((point) => ({ ...point, aftIn: inches(between) }));
    const { ways, request } = waysFor([standing('0434', 'R3L'), standing('0435', 'R3R')], { envelope });
    expect(ways.move!.words).toMatch(/^move /);
    const places = new Map(ways.move!.aboard.map(({ number, position }) => [number, position]));
    const drums = request.load.drums.map((drum) => ({ ...drum, position: places.get(drum.number)! }));
    expect(drums).toHaveLength(2);
    expect(makeLoadSheet({ ...request, load: { ...request.load, drums } }).holds).toBe(true);
  });
});
