import { expect, it } from 'vitest';
import { tinyTerritory } from '../tiny-territory.js';
import { surfaceHeard } from './surface-heard.js';

const report = { place: 'NOR', state: 'dry' as const, by: 'helper' };
const nor = tinyTerritory().places.find(({ code }) => code === 'NOR')!;
const heard = (at: string) => surfaceHeard(tinyTerritory({ surfaceReports: [{ ...report, at }] }))(nor);

it('a surface is told with the time of its report, and is unknown when that is older than it stays fresh', () => {
  // Seen on 3 March at 05:00; a report of NOR is fresh for 24 h.
  expect(heard('2031-03-02T18:10Z')).toBe('dry 2 March 18:10');
  expect(heard('2031-03-02T04:50Z')).toBe('unknown');
  expect(surfaceHeard(tinyTerritory())(nor)).toBe('unknown');
});
