import { describe, expect, it } from 'vitest';
import { tinyCache, tinyDrums } from '../tiny-territory.js';
import { day1, day2, flight, found, tiny, withStrip } from './testing/one-flight.js';

describe('caches', () => {
  it('landing capacity: drums from every flight of a day', () => {
    const strip = withStrip({ landingCapacityDrumsPerDay: 6 });
    const second = flight({ id: 'F2', stops: [{ place: 'NOR', drums: 3 }] });
    expect(found(strip, flight(), second)).toEqual([
      'NOR, Mon 3 Mar: 7 drums would be unloaded; the hands there unload 6 a day. Land 1 drum on another day.',
    ]);
    expect(found(strip, flight({ state: 'home' }), second)).toHaveLength(1);
  });

  it('capacity: held and past-retest drums count, empties do not', () => {
    const caches = [tinyCache('NOR', { capacityDrums: 8, empties: 20 }), tinyCache('SOU')];
    expect(found({ caches }, flight())).toEqual([]);
    const [first, ...others] = tinyDrums('NOR', 5, 100);
    const held = { ...first!, held: { reason: 'water', by: 'QA', at: '2031-03-01T10:00Z' } };
    const drums = [held, ...others, ...tinyDrums('HOM', 20, 300)];
    expect(found({ caches, drums }, flight())[0]).toContain(
      '9 drums would stand there after the landings; the site holds 8. Land 1 drum less, or later.',
    );
  });

  it('capacity: a cache that is overfull already is no fault of the plan; one more drum is', () => {
    const caches = [tinyCache('NOR', { capacityDrums: 3 }), tinyCache('SOU')];
    expect(found({ caches }, flight({ stops: [{ place: 'SOU', drums: 1 }] }))).toEqual([]);
    expect(found({ caches }, flight({ stops: [{ place: 'NOR', drums: 1 }] }))[0]).toContain(
      '5 drums would stand there after the landings; the site holds 3.',
    );
  });

  it('order of a day: slings out leave after the landings have had to fit', () => {
    const caches = [tinyCache('NOR', { capacityDrums: 7 }), tinyCache('SOU')];
    const slings = [
      {
        date: day1,
        helicopter: 'H',
        from: 'NOR',
        to: 'SOU',
        drums: 3,
        distanceNm: tiny.distances[2]!.distanceNm,
      },
    ];
    expect(found({ caches, slings }, flight())[0]).toContain('8 drums would stand there');
  });

  it('a permit that has ended refuses drums', () => {
    const caches = [tinyCache('NOR', { permitUntil: '2031-03-03' }), tinyCache('SOU')];
    expect(found({ caches }, flight())).toEqual([]);
    expect(found({ caches }, flight({ date: day2 }))[0]).toContain('until Mon 3 Mar only');
  });
});
