import type { MyPlaces } from '@drumline/contract';
import { describe, expect, it } from 'vitest';
import type { ShownEntry } from '../phone/index.js';
import { type KeptPlaces, notInYet } from './own-movements.js';

const read: KeptPlaces = {
  places: { known: ['m-known'] } as unknown as MyPlaces,
  at: '2027-06-14T10:00:00.000Z',
};
const entry = (
  id: string,
  state: ShownEntry['state'],
  withBaseAt: string | null,
  kind = 'drawn',
): ShownEntry => ({
  seq: 1,
  words: 'a report',
  flight: null,
  by: 'RW1',
  clock: { phoneAt: '2027-06-14T09:00Z', at: '2027-06-14T09:00Z', serverAheadMs: 0 },
  requests: [{ path: `/api/movements/${id}`, body: { kind } }],
  state,
  withBaseAt,
  says: [],
});
const ids = (...entries: readonly ShownEntry[]) => notInYet(read, entries).map(({ id }) => id);

describe('what base’s picture does not have in it yet', () => {
  it('is what waits, and what base took after it told', () => {
    expect(ids(entry('m1', 'kept', null))).toEqual(['m1']);
    expect(ids(entry('m1', 'with base', '2027-06-14T10:01:00.000Z'))).toEqual(['m1']);
    expect(ids(entry('m1', 'with base', '2027-06-14T09:30:00.000Z'))).toEqual([]);
  });

  it('one whose answer was lost is not counted twice: base names what it knows', () => {
    expect(ids(entry('m-known', 'kept', null))).toEqual([]);
  });

  it('what this phone has taken back is none, though base has not heard of either', () => {
    const correction = entry('c1', 'kept', null, 'corrected');
    const [request] = correction.requests;
    const body = { ...request!.body, corrects: 'm1' };
    expect(
      ids(entry('m1', 'kept', null), entry('m2', 'kept', null), {
        ...correction,
        requests: [{ path: request!.path, body }],
      }),
    ).toEqual(['m2']);
  });

  it('what base did not take goes by base, but a rejected drum stays unusable', () => {
    const at = '2027-06-14T09:30:00.000Z';
    expect(ids(entry('m1', 'asks', at))).toEqual([]);
    expect(ids(entry('m1', 'asks', at, 'held'))).toEqual(['m1']);
  });
});
