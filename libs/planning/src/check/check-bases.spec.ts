import { centsPerLitre, litres, minutes } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Scenario } from '../scenario.js';
import { tinyDrums } from '../tiny-territory.js';
import { day1, day2, flight, found, soft, tiny, withType } from './testing/one-flight.js';

describe('bases', () => {
  const base = (changes: Partial<Scenario['bases'][number]>) => ({
    bases: [{ ...tiny.bases[0]!, ...changes }],
  });
  const drums = [...tinyDrums('NOR', 4, 100), ...tinyDrums('HOM', 2, 300)];

  it('drums ready at a base: a drum filled on a day flies from the next', () => {
    expect(found({ drums }, flight())[0]).toContain(
      '4 drums would have been taken by then; 2 stood filled and fit, and 0 more can be filled. Take 2 drums less',
    );
    expect(found({ drums }, flight({ date: day2 }))).toEqual([]);
    expect(found({ drums, ...base({ emptiesFitForUse: 1 }) }, flight({ date: day2 }))[0]).toContain(
      '1 more can be filled',
    );
  });

  it('base stock: drums taken and own fuel come out of bulk, filled drums and resupplies', () => {
    // Own fuel: 20 taxi + 280 trip = 300 lb = 170.1 L at 0.8 kg/L.
    const filled = [...tinyDrums('NOR', 4, 100), ...tinyDrums('HOM', 4, 300)];
    expect(found({ drums: filled, ...base({ bulkLitres: litres(171) }) }, flight())).toEqual([]);
    expect(found({ drums: filled, ...base({ bulkLitres: litres(170) }) }, flight())[0]).toContain(
      'Drums and own fuel would need 971 L by then; filled drums, bulk and resupplies come to 970 L',
    );
    const vessel = { resupplies: [{ date: day1, litres: litres(100) }], pricePerLitre: centsPerLitre(1) };
    expect(found({ drums: filled, ...base({ bulkLitres: litres(80), ...vessel }) }, flight())).toEqual([]);
  });
});

it('frozen flights: a flight that is away is a fact, and counts without being judged', () => {
  expect(found(soft, flight({ state: 'away' }))).toEqual([]);
  expect(found(soft, flight({ state: 'approved' }))).toHaveLength(1);
  expect(found({ ...soft, asOf: '2031-03-04T05:00Z' }, flight({ state: 'approved' }))).toEqual([]);
});

it('duty: a turn-round at every landing lengthens the day', () => {
  const long = withType({ turnRoundMinutes: minutes(300) });
  expect(found(long, flight({ departs: '07:00' }))).toEqual([]);
  expect(found(long, flight({ departs: '11:10' }))[0]).toContain('Landing at 17:04');
});
