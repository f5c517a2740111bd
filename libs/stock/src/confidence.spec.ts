import { describe, expect, it } from 'vitest';
import { type Evidence, stockConfidence } from './confidence.js';

const good: Evidence = { countAgeHours: 20, seenFrom: 'ground', isDisputed: false, silentPhones: 0 };
const of = (changes: Partial<Evidence>) => stockConfidence({ ...good, ...changes });

describe('confidence of stock', () => {
  it('is high after a count of yesterday with nothing against it', () => {
    expect(of({})).toEqual({ confidence: 'high', why: [] });
  });

  it.each([
    ['a count of 8 days ago', { countAgeHours: 8 * 24 }],
    ['a count from the air', { seenFrom: 'air' }],
    ['a silent phone', { silentPhones: 1 }],
  ] as const)('falls to medium with %s', (_, changes) => {
    expect(of(changes)).toMatchObject({ confidence: 'medium', why: [expect.any(String)] });
  });

  it.each([
    ['no count', { countAgeHours: null }],
    ['a count of 15 days ago', { countAgeHours: 15 * 24 }],
    ['a dispute', { isDisputed: true }],
    ['two things against it', { seenFrom: 'air', silentPhones: 2 }],
  ] as const)('is low with %s', (_, changes) => {
    expect(of(changes).confidence).toBe('low');
  });

  it('a count of seven days to the hour is fresh, of fourteen not yet old', () => {
    expect(of({ countAgeHours: 168 }).confidence).toBe('high');
    expect(of({ countAgeHours: 336 }).confidence).toBe('medium');
  });
});
