import { describe, expect, it } from 'vitest';
import { day1, flight, found, tiny } from './testing/one-flight.js';

describe('times', () => {
  it('crew hours: a pilot may fly two aircraft in a day, not at once', () => {
    const aircraft = [...tiny.aircraft, { tail: 'T2', type: 'T', home: 'HOM', absences: [] }];
    const other = flight({ id: 'F2', aircraft: 'T2', stops: [{ place: 'SOU', drums: 1 }] });
    const at = (one: string, two: string) =>
      found({ aircraft }, flight({ departs: one }), { ...other, departs: two });
    expect(at('07:00', '08:54')).toEqual([]);
    expect(at('07:00', '08:53')[0]).toContain('P1 would fly both at once');
  });

  it('two flights at once are told once, also on a day that has a flight without a time', () => {
    const stops = [{ place: 'NOR', drums: 1 }];
    const told = found(
      {},
      flight({ departs: '07:00' }),
      flight({ id: 'F2', departs: '07:15', stops }),
      flight({ id: 'F3', stops }),
    );
    expect(told.filter((words) => words.includes('would fly both at once'))).toHaveLength(1);
    expect(told.filter((words) => words.includes('no schedule'))).toEqual([]);
  });

  it('an aircraft that is away, and one that stands elsewhere', () => {
    const [aircraft] = tiny.aircraft;
    const away = { ...aircraft!, absences: [{ from: day1, until: day1, reason: 'inspection' }] };
    expect(found({ aircraft: [away] }, flight())[0]).toContain('T1 is away: inspection');
    expect(found({ aircraft: [{ ...aircraft!, home: 'SOU' }] }, flight())[0]).toContain(
      'T1 stands at SOU; this flight starts at HOM',
    );
  });

  it('a flight keeps to the flying day and to daylight less the margin', () => {
    expect(found({}, flight({ departs: '06:59' }))[0]).toContain('the first departure is at 07:00');
    expect(found({}, flight({ departs: '15:36' }))).toEqual([]);
    expect(found({}, flight({ departs: '15:37' }))[0]).toContain(
      'Landing at 17:01; the last landing is at 17:00',
    );
    const late = { ...tiny.policy, flyingDay: { ...tiny.policy.flyingDay, lastLanding: '20:00' } };
    expect(found({ policy: late }, flight({ departs: '16:00' }))[0]).toContain('30 min before sunset at');
  });

  it('a day without times has a fault when no order of its flights fits', () => {
    const short = { ...tiny.policy, flyingDay: { ...tiny.policy.flyingDay, lastLanding: '10:00' } };
    const second = flight({ id: 'F2', stops: [{ place: 'NOR', drums: 1 }] });
    expect(found({ policy: short }, flight())).toEqual([]);
    expect(found({ policy: short }, flight(), second)[0]).toContain('The day has no schedule');
  });
});
