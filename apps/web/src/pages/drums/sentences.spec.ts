import type { Millilitres, Movement } from '@drumline/stock';
import { kilograms } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { sentenceOf, sourceOf } from './sentences.js';

const written = {
  id: 'a',
  happenedAt: '2027-05-03T09:20Z',
  writtenAt: '2027-05-03T09:42Z',
  receivedAt: '2027-05-03T10:44:12.000Z',
  means: 'phone',
  by: 'A. Pilot',
  witnesses: [],
} as const;
const ml = (litres: number) => (litres * 1000) as Millilitres;
const when = (at: string) => at.slice(11, 16);

describe('an entry as a sentence', () => {
  it('filling says litres, net, gross and tare, each with its unit', () => {
    const filled: Movement = {
      ...written,
      kind: 'filled',
      drum: '0514',
      place: 'ALD',
      batch: 'J27-041',
      millilitres: ml(200),
      tareKg: kilograms(19.7),
      grossKg: kilograms(180.5),
    };
    expect(sentenceOf(filled)).toBe(
      'Filled at ALD, batch J27-041, 200 L, 160.8 kg net, 180.5 kg gross, tare 19.7 kg.',
    );
  });

  it('a draw says into what, for whom and what is left', () => {
    const drawn: Movement = {
      ...written,
      kind: 'drawn',
      drum: '0514',
      place: 'LOR',
      millilitres: ml(120),
      into: 'H2',
      programme: 'P3',
      leftMillilitres: ml(80),
    };
    expect(sentenceOf(drawn)).toBe('120 L drawn at LOR into H2 for P3; 80 L left in it.');
    expect(sentenceOf({ ...drawn, leftMillilitres: null, medevac: 'patient' })).toBe(
      '120 L drawn at LOR into H2 for P3, from the medevac reserve: patient.',
    );
  });

  it('a batch that is held, and its release by two', () => {
    const of = { batch: 'J27-041' };
    expect(sentenceOf({ ...written, kind: 'held', of, reason: 'water' })).toBe('Batch J27-041 held: water.');
    expect(sentenceOf({ ...written, kind: 'released', of, reason: 'clear', second: 'B. Check' })).toBe(
      'Batch J27-041 released: clear. Second person: B. Check.',
    );
  });

  it('a retest that was passed says the next one by its day and year', () => {
    const passed = { certificate: 'C 12', retestDue: '2028-03-01' };
    expect(sentenceOf({ ...written, kind: 'retest passed', of: { drum: '0514' }, ...passed })).toBe(
      'Drum 0514 passed its retest, certificate C 12. Next retest due Wed 1 March 2028.',
    );
  });
});

describe('its source', () => {
  const opened: Movement = { ...written, kind: 'opened', drum: '0514', place: 'LOR' };

  it('written later, entered later still: both times are said', () => {
    expect(sourceOf(opened, when)).toBe('A. Pilot, by phone, written 09:42, entered 10:44');
  });

  it('entered as it happened: who and how', () => {
    const at = '2027-05-03T09:20:00.000Z';
    expect(sourceOf({ ...opened, writtenAt: at, receivedAt: at, means: 'screen' }, when)).toBe(
      'A. Pilot, at the screen',
    );
  });
});
