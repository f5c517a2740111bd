import type { MyPlaces } from '@drumline/contract';
import type { Movement } from '@drumline/stock';
import { litres, nauticalMiles } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { type PlacesNow, placesNow } from '../places-now.js';
import { slingPlan, slingPlans } from './sling.js';

const planned = {
  date: '2027-06-17',
  helicopter: 'H1',
  from: 'XESK',
  to: 'XMAR',
  drums: 6,
  distanceNm: nauticalMiles(14.9),
};
const places = (left = [planned]) =>
  ({
    timeZone: 'Etc/GMT',
    slings: [planned],
    outlook: {
      picture: { drums: [], batches: [], counts: [], asOf: '2027-06-15T06:00Z' },
      caches: [],
      dates: ['2027-06-15', '2027-06-16', '2027-06-17'],
      fillLitres: litres(200),
      draws: [],
      landings: [],
      slings: left,
    },
  }) as unknown as MyPlaces;
const set = (drum: string) =>
  ({
    ...{ id: drum, kind: 'slung', drum, helicopter: 'H1', from: 'XESK', to: 'XMAR' },
    ...{ happenedAt: '2027-06-15T07:00Z', writtenAt: '2027-06-15T07:00Z', receivedAt: '2027-06-15T07:00Z' },
    ...{ by: 'R. Wing', witnesses: [], means: 'phone' },
  }) as unknown as Movement;
const on = (day: string, own: readonly Movement[], left?: (typeof planned)[]): PlacesNow =>
  placesNow(places(left), own, new Date(`${day}T08:00Z`));

describe('a sling planned for Thursday', () => {
  it('that is begun on Tuesday has three of six set down on this phone, and three to go', () => {
    const now = on('2027-06-15', ['0470', '0471', '0472'].map(set));
    expect(slingPlan(now, 'XESK')).toMatchObject({ drums: 6, setDown: 3 });
    expect(now.outlook.slings.map(({ drums }) => drums)).toEqual([3]);
  });

  it('that base knows to be flown early is no work any more', () => {
    expect(slingPlans(on('2027-06-16', [], []))).toEqual([]);
    expect(slingPlan(on('2027-06-16', [], []), 'XESK')).toBeNull();
  });

  it('that was flown on its day stays to be read on that day', () => {
    expect(slingPlans(on('2027-06-17', [], []))).toMatchObject([{ drums: 6, setDown: 6 }]);
  });
});
