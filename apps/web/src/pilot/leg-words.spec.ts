import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { legWords, stripWords, surfaceAt } from './leg-words.js';
import { differences } from './newer-version.js';
import { exampleDay, exampleFlight } from './testing/example-flight.js';

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
    expect(leave).toMatchObject({ over: true, main: 'Stay: 11 lb too heavy' });
    expect(leave.rest[0]).toContain('7,911 lb, take-off limit 7,900 lb dry');
    expect(leave.rest[1]).toMatch(/: .* lb, .* spare$/);
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

describe('a newer version', () => {
  it('is told by what differs, the drums first, without the totals that are typed blind', () => {
    const [stop] = exampleFlight.stops;
    const newer = { ...exampleFlight, version: 4, departs: '08:00', stops: [{ ...stop!, drums: ['0434'] }] };
    expect(differences(exampleFlight, newer).map(({ of, opened, newest }) => [of, opened, newest])).toEqual([
      ['Drums', '3', '1'],
      ['Off the load', '', '0435 0437'],
      ['Off at', '2027-06-15 07:10', '2027-06-15 08:00'],
    ]);
  });
});
