import { expect, it } from 'vitest';
import type { KeptLine } from '../paper/kept-lines.js';
import { keptSurfaces } from './kept-surfaces.js';

const line = (at: string, surface: string, state: KeptLine['state'] = 'kept'): KeptLine => ({
  id: `${at} ${surface}`,
  text: `LOR ${surface}`,
  words: '',
  flight: null,
  happenedAt: at,
  writtenAt: at,
  by: 'J. Holm',
  means: 'radio',
  enteredAt: at,
  enteredBy: 'K. Aske',
  requests: [
    { path: '/api/movements/1', body: {} },
    { path: '/api/surface-reports/2', body: { place: 'XLOR', state: surface, at, by: 'J. Holm' } },
  ],
  answered: 0,
  state,
  says: [],
});

it('of two reports of a strip that wait the later one is told, whatever came first to this machine', () => {
  const kept = keptSurfaces([line('2027-06-15T06:52Z', 'soft'), line('2027-06-15T06:40Z', 'damp')]);
  expect(kept.get('XLOR')).toMatchObject({ report: { state: 'soft' }, isRefused: false });
});

it('what base has does not wait; what base says no to still does', () => {
  expect(keptSurfaces([line('2027-06-15T06:52Z', 'soft', 'with base')]).size).toBe(0);
  expect(keptSurfaces([{ ...line('2027-06-15T06:52Z', 'soft'), answered: 2 }]).size).toBe(0);
  expect(keptSurfaces([line('2027-06-15T06:52Z', 'soft', 'asks')]).get('XLOR')).toMatchObject({
    isRefused: true,
  });
});
