import type { SurfaceReport } from '@drumline/network';
import type { IsoInstant } from '@drumline/units';
import { expect, it } from 'vitest';
import { changedWords } from './changed-words.js';

const report = (state: 'dry' | 'soft', at: IsoInstant): SurfaceReport => ({
  place: 'XLOR',
  state,
  at,
  by: 'strip helper',
});
const soft = report('soft', '2027-06-14T05:40Z');
const dryLater = report('dry', '2027-06-14T06:30Z');

const said = (of: SurfaceReport, standing: SurfaceReport): string =>
  changedWords(
    {
      kind: 'surface',
      at: '2027-06-14T07:00Z',
      writtenAt: null,
      person: 'Dispatcher',
      means: null,
      facts: { report: of },
    },
    new Map([['XLOR', standing]]),
  ).what;

it('a surface report that comes in after a later one says that it does not count', () => {
  expect(said(soft, dryLater)).toBe('XLOR soft; kept, a later report stands');
  expect(said(dryLater, dryLater)).toBe('XLOR dry');
});

const news = (kind: 'flight' | 'territory', facts: Readonly<Record<string, unknown>>): string =>
  changedWords(
    { kind, at: '2027-06-14T07:00Z', writtenAt: null, person: 'Dispatcher', means: null, facts },
    new Map(),
  ).what;

it('a flight held in place is not told as offered, though that is its state', () => {
  const facts = { flight: 'F010', state: 'offered' };
  expect(news('flight', { ...facts, act: 'hold in place' })).toBe('F010 held in place');
  expect(news('flight', { ...facts, act: 'free to move' })).toBe('F010 free to move again');
});

it('a day in the name of what changed is read as a day', () => {
  const facts = { did: 'changed', subject: 'sling move H1, XESK-XMAR, 2027-06-15' };
  expect(news('territory', facts)).toBe('sling move H1, XESK-XMAR, Tue 15 changed');
});

it('of what was changed says which figures, from what to what', () => {
  const facts = { did: 'changed', subject: 'settings', changed: ['offered days 7 to 5', 'no flying days'] };
  expect(news('territory', facts)).toBe('settings changed: offered days 7 to 5, no flying days');
});
