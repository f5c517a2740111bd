import { describe, expect, it } from 'vitest';
import type { HoldEffect, Proposal } from '../drums-read.js';
import {
  cachesWords,
  levelWords,
  releasedBy,
  releaseOf,
  type Subject,
  sizeWords,
  worstFirst,
} from './hold-words.js';

const place = (
  code: string,
  usableLitresAfter: number,
  levelAfter: HoldEffect['places'][number]['levelAfter'],
): HoldEffect['places'][number] => ({
  place: code,
  drums: 2,
  numbers: ['1', '2'],
  usableLitresBefore: 2000,
  usableLitresAfter,
  levelAfter,
  radioScript: '',
});

const effect: HoldEffect = {
  drums: 44,
  litres: 8800,
  places: [
    place('ALD', 9200, null),
    place('LOR', 1000, 'below minimum'),
    place('ESK', 1200, 'enough'),
    place('KNA', 120, 'below critical'),
  ],
  belowMinimum: ['LOR', 'KNA'],
  belowCritical: ['KNA'],
  flights: [],
  message: '',
  toHear: [],
};

describe('a hold before it is set', () => {
  it('says how much it takes out of use, and which caches fall short', () => {
    expect(sizeWords(effect)).toBe('44 drums, 8,800 L, in 4 places.');
    expect(cachesWords(effect)).toBe('With it 2 caches are below minimum, 1 of them below critical.');
    expect(cachesWords({ ...effect, belowMinimum: [], belowCritical: [] })).toBe('No cache falls short.');
  });

  it('has the worst place first, and the bases last', () => {
    expect(worstFirst(effect.places).map((each) => each.place)).toEqual(['KNA', 'LOR', 'ESK', 'ALD']);
  });

  it('exactly the minimum is at minimum, not below', () => {
    const esk = effect.places[2]!;
    expect(levelWords(esk, 1200)).toEqual({ level: 'above', words: 'At minimum' });
    expect(levelWords(esk, 1000)).toEqual({ level: 'above' });
    expect(levelWords(effect.places[0]!, undefined)).toBeNull();
  });
});

it('a proposal to release belongs to its batch alone', () => {
  const proposal = (id: string, of: Subject): Proposal => ({
    id,
    act: 'release hold',
    subject: '',
    payload: { movement: { kind: 'released', of } },
    proposedAt: '',
    agreed: [],
    agreedBy: [],
  });
  const open = [proposal('a drum', { drum: 'J27-041' }), proposal('a batch', { batch: 'J27-041' })];
  expect(releaseOf(open, { batch: 'J27-041' })?.id).toBe('a batch');
  expect(releaseOf(open, { batch: 'J27-04' })).toBeUndefined();
  expect(releasedBy({ payload: { movement: { kind: 'retest passed', of: { drum: '0401' } } } })).toBeNull();
});
