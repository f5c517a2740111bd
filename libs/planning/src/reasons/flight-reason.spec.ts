import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { describeFlights } from '../flights/describe-flights.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyCache, tinyTask, tinyTerritory } from '../tiny-territory.js';

const toNor = (changes: Partial<StandingFlight> = {}): StandingFlight => ({
  id: 'F1',
  state: 'offered',
  date: '2031-03-03',
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums: 2 }],
  to: 'HOM',
  ...changes,
});
const reasonOf = (changes: Partial<Scenario>, ...flights: readonly StandingFlight[]) =>
  describeFlights(tinyTerritory(changes), flights, 'operator').flights[0]!.reason;

describe('why a flight flies', () => {
  it('names the first cache and day that falls short without it, with figures', () => {
    // NOR opens with 800 L and gives 500 L on day 2; the minimum is 400 L.
    expect(reasonOf({}, toNor())).toEqual({
      protects: { place: 'NOR', date: '2031-03-04', level: 'below minimum' },
      daysInHand: 1,
      ifDeclined: 'Without it NOR falls below minimum on Tue 4 Mar: 300 L of 400 L.',
      text: 'Keeps NOR above minimum on Tue 4 Mar: 700 L with it, 300 L without, minimum 400 L; 1 day in hand.',
    });
  });

  it('drums on hold keep no cache above anything until fit ones go in their place', () => {
    const allHeld = reasonOf({}, toNor({ stops: [{ place: 'NOR', drums: 2, heldDrums: 2 }] }));
    expect(allHeld.protects).toBeNull();
    expect(allHeld.text).toBe(
      'Its drums are all on HOLD: they count in no level until fit ones go in their place.',
    );
    const oneHeld = reasonOf({}, toNor({ stops: [{ place: 'NOR', drums: 2, heldDrums: 1 }] }));
    expect(oneHeld.text).toBe(
      'Keeps NOR above minimum on Tue 4 Mar: 500 L with it, 300 L without, minimum 400 L; 1 day in hand. Without the 1 drum of it on HOLD.',
    );
  });

  it('tells the worse fall that follows', () => {
    const helicopterTasks = [tinyTask('2031-03-04', 'NOR', 500), tinyTask('2031-03-06', 'NOR', 150)];
    expect(reasonOf({ helicopterTasks }, toNor()).ifDeclined).toBe(
      'Without it NOR falls below minimum on Tue 4 Mar and below critical on Thu 6 Mar: 150 L of 200 L.',
    );
  });

  it('every cache that suffers is told, the worst first', () => {
    const helicopterTasks = [tinyTask('2031-03-04', 'NOR', 500), tinyTask('2031-03-05', 'SOU', 450)];
    const stops = [
      { place: 'NOR', drums: 2 },
      { place: 'SOU', drums: 1 },
    ];
    const reason = reasonOf({ helicopterTasks }, toNor({ stops }));
    expect(reason.protects).toMatchObject({ place: 'NOR' });
    expect(reason.ifDeclined).toBe(
      'Without it SOU falls below critical on Wed 5 Mar: 150 L of 200 L. Without it NOR falls below minimum on Tue 4 Mar: 300 L of 400 L.',
    );
  });

  it('a flight on the day that needs it has no day in hand', () => {
    const reason = reasonOf({}, toNor({ date: '2031-03-04' }));
    expect(reason.daysInHand).toBe(0);
    expect(reason.text).toContain('; no day in hand.');
    expect(reasonOf({ helicopterTasks: [] }, toNor()).daysInHand).toBeNull();
  });

  it('below nothing a cache runs out, with what cannot be drawn', () => {
    const helicopterTasks = [tinyTask('2031-03-04', 'NOR', 975)];
    const open = tinyCache('NOR', { minimumLitres: litres(0), criticalLitres: litres(0) });
    for (const caches of [[open], [tinyCache('NOR')]]) {
      const reason = reasonOf({ helicopterTasks, caches }, toNor());
      expect(reason.protects).toMatchObject({ level: 'run out', date: '2031-03-04' });
      expect(reason.ifDeclined).toBe(
        'Without it NOR runs out on Tue 4 Mar: 175 L of the 975 L asked for cannot be drawn.',
      );
    }
  });

  it('protects nothing where another flight has landed enough', () => {
    const reason = reasonOf({}, toNor(), toNor({ id: 'F2' }));
    expect(reason.protects).toBeNull();
    expect(reason.ifDeclined).toBe('Without it no cache falls short; NOR ends at 700 L instead of 1,100 L.');
  });

  it('protects the end target when no minimum is in danger', () => {
    const caches = [
      tinyCache('NOR', {
        minimumLitres: tinyCache('NOR').criticalLitres,
        endTargetLitres: tinyCache('NOR').minimumLitres,
      }),
      tinyCache('SOU'),
    ];
    expect(reasonOf({ caches }, toNor())).toMatchObject({
      protects: { place: 'NOR', date: '2031-03-07', level: 'short of the end target' },
      ifDeclined: 'Without it NOR ends short of its target on Fri 7 Mar: 300 L of 400 L.',
    });
  });

  it('a shortage that stays is lessened, not prevented', () => {
    const helicopterTasks = [tinyTask('2031-03-04', 'NOR', 790)];
    const reason = reasonOf({ helicopterTasks }, toNor({ stops: [{ place: 'NOR', drums: 1 }] }));
    expect(reason.protects).toMatchObject({ level: 'below critical' });
    expect(
      reasonOf(
        { helicopterTasks: [tinyTask('2031-03-03', 'NOR', 700)] },
        toNor({ date: '2031-03-04', stops: [{ place: 'NOR', drums: 1 }] }),
      ).text,
    ).toContain('Keeps NOR above critical on Tue 4 Mar');
  });

  it('a strip that feeds a pad by sling protects the pad too', () => {
    const slings = [
      {
        date: '2031-03-05',
        helicopter: 'H',
        from: 'NOR',
        to: 'SOU',
        drums: 3,
        distanceNm: tinyTerritory().distances[2]!.distanceNm,
      },
    ];
    const helicopterTasks = [tinyTask('2031-03-06', 'SOU', 800)];
    const caches = [
      tinyCache('NOR', { minimumLitres: 0 as never, criticalLitres: 0 as never }),
      tinyCache('SOU'),
    ];
    const drums = tinyTerritory().drums.filter(({ place }) => place !== 'NOR');
    const reason = reasonOf(
      { slings, helicopterTasks, caches, drums },
      toNor({ stops: [{ place: 'NOR', drums: 3 }] }),
    );
    expect(reason.protects).toMatchObject({ place: 'SOU', date: '2031-03-06' });
  });
});
