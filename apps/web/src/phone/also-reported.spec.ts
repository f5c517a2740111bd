import { describe, expect, it } from 'vitest';
import { alsoReported } from './also-reported.js';

const requests = ['one', 'two', 'three'].map((id) => ({ path: `/api/movements/${id}` }));

describe('a report that others have made too', () => {
  it('names each person once, with the time at which they first wrote it', () => {
    const same = [
      { movement: 'two', by: 'H. Wing', writtenAt: '2027-06-15T09:14:00.000Z' },
      { movement: 'one', by: 'H. Wing', writtenAt: '2027-06-15T09:12:00.000Z' },
      { movement: 'one', by: 'S. Helper', writtenAt: '2027-06-15T08:40:00.000Z' },
      { movement: 'of another report', by: 'A. Pilot', writtenAt: '2027-06-15T08:00:00.000Z' },
    ];
    expect(alsoReported(requests, same)).toEqual([
      { by: 'S. Helper', at: '2027-06-15T08:40:00.000Z' },
      { by: 'H. Wing', at: '2027-06-15T09:12:00.000Z' },
    ]);
  });

  it('names nobody when nobody has', () => {
    expect(alsoReported(requests, [])).toEqual([]);
  });
});
