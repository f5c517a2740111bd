import { litres } from '@drumline/units';
import { expect, it } from 'vitest';
import type { PackPlace } from './day-pack.js';
import { notHeardLines } from './not-heard-lines.js';

const place = (code: string, surface: string | null, needsCount: boolean): PackPlace => ({
  ...{ code, name: code, radioTime: null, hands: null, drumsADay: 6, tailwindLimitKt: 5, isOneWay: false },
  ...{ surface, usableLitres: litres(400), minimumLitres: litres(200), level: 'above minimum', needsCount },
});

it('a strip without a fresh report, a cache without a fresh count and a silent phone are not heard from', () => {
  const places = [
    place('XAA', 'unknown', true),
    place('XBB', 'dry 14 June 05:58', false),
    place('XCC', null, true),
  ];
  expect(notHeardLines({ places, silentPeople: ['Crew FW1'] })).toEqual([
    'Surface unknown: XAA.',
    'No count in 7 days: XAA, XCC.',
    'Silent for a day: Crew FW1.',
  ]);
});

it('where many are silent, their number is told', () => {
  const places = ['A', 'B', 'C', 'D', 'E'].map((code) => place(code, 'unknown', false));
  expect(notHeardLines({ places, silentPeople: [] })).toEqual(['Surface unknown: 5 places.']);
});

it('says that nothing is missing only where every surface and count is fresh', () => {
  const places = [place('XBB', 'dry 14 June 05:58', false)];
  expect(notHeardLines({ places, silentPeople: [] })).toEqual(['Nothing is missing, nobody is silent.']);
});
