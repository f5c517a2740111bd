import { hours, kilograms, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../check/check-plan.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyCache, tinyTask, tinyTerritory } from '../tiny-territory.js';
import { describeFlights } from './describe-flights.js';

const day1 = '2031-03-03';
const flight = (changes: Partial<StandingFlight> = {}): StandingFlight => ({
  id: 'F1',
  state: 'offered',
  date: day1,
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums: 4 }],
  to: 'HOM',
  pilot: 'P1',
  ...changes,
});
const describeIn = (changes: Partial<Scenario>, ...flights: readonly StandingFlight[]) =>
  describeFlights(tinyTerritory(changes), flights, 'minimum');
const softNor = {
  surfaceReports: [{ place: 'NOR', state: 'soft' as const, at: '2031-03-03T04:00Z', by: 'helper' }],
};

describe('a flight as people read it', () => {
  it('tells what each leg carries, what it may carry, and where the drums stand', () => {
    const [read] = describeIn({}, flight()).flights;
    expect(
      read!.legs.map(({ from, to, drumsAboard, drumsPossible }) => [from, to, drumsAboard, drumsPossible]),
    ).toEqual([
      ['HOM', 'NOR', 4, 4],
      ['NOR', 'HOM', 0, 4],
    ]);
    expect(read!.legs[0]).toMatchObject({
      binding: { name: 'drum positions' },
      positions: ['R1', 'R2', 'R3', 'R4'],
    });
    expect(read!.legs[1]!.positions).toEqual([]);
    expect(read).toMatchObject({
      rampFuelLb: 560,
      drums: 4,
      litres: 800,
      day: 1,
      type: 'T',
      kind: 'positioning',
    });
    // 20 taxi + 2 x 140 = 300 lb at 0.8 kg/L.
    expect(read!.ownFuelLitres).toBeCloseTo(170.1, 1);
  });

  it('rounding: the cost is in three parts, each to the cent: block hours and landings, fuel at the base, handling', () => {
    const [read] = describeIn({}, flight()).flights;
    expect(read!.cost).toEqual({
      flight: 82_000,
      fuel: 120_000,
      handling: 3_600,
      total: 205_600,
      litres: 800,
      perLitre: 257,
    });
  });

  it('unload or stay: the weight with the drums aboard against the take-off limit of the strip', () => {
    const stay = (drums: number) =>
      describeIn({}, flight({ stops: [{ place: 'NOR', drums }] })).flights[0]!.stops[0]!.unloadOrStay;
    expect(stay(4).arrivalLb).toBeCloseTo(4000 + 1587.33 + 400, 1);
    expect(stay(4).arrivalLb - stay(1).arrivalLb).toBeCloseTo(1190.5, 1);
    expect(stay(4)).toMatchObject({ takeoffLimitLb: 7000, canLeaveLoaded: true });
    expect(
      describeIn(softNor, flight({ stops: [{ place: 'NOR', drums: 3 }] })).flights[0]!.stops[0]!.unloadOrStay
        .takeoffLimitLb,
    ).toBe(6500);
  });

  it('says what to do when the strip is soft, with the other stops served as planned', () => {
    const ifSoft = (...stops: { place: string; drums: number }[]) =>
      describeIn({}, flight({ stops })).flights[0]!.stops.map((stop) => [stop.drumsIfSoft, stop.ifSoft]);
    // NOR opens with 800 L, gives 500 L on day 2, and wants 400 L.
    expect(ifSoft({ place: 'NOR', drums: 4 })).toEqual([
      [3, 'If soft: take 3 of 4; NOR stays above minimum. If closed: do not go, as if declined.'],
    ]);
    expect(ifSoft({ place: 'NOR', drums: 3 })[0]![1]).toContain('If soft: all 3 drums may go.');
    expect(ifSoft({ place: 'NOR', drums: 1 })[0]![1]).toContain('If soft: the drum may go.');
    const two = ifSoft({ place: 'NOR', drums: 2 }, { place: 'SOU', drums: 2 });
    expect(two[0]![1]).toContain(
      'If closed: do not land there; NOR then falls below minimum on Tue 4 Mar: 300 L of 400 L.',
    );
    // On the longer route NOR takes two drums when soft, and those are for SOU.
    expect(two[0]![0]).toBe(0);
    expect(two[0]![1]).toMatch(/^If soft: take none of 2 for NOR, all 2 for SOU; NOR /);
    expect(two[1]![1]).toMatch(/^If soft: both drums may go\./);
    const one = ifSoft({ place: 'NOR', drums: 1 }, { place: 'SOU', drums: 3 });
    expect(one[1]![1]).toMatch(/^If soft: all 3 drums may go\./);
    // Three for SOU are too heavy for it already: nobody is told to take them there.
    expect(one[0]![0]).toBeNull();
    expect(one[0]![1]).toMatch(/^If soft or closed: do not land there; NOR /);
  });

  it('says what the cache then does where a soft strip takes too few', () => {
    const helicopterTasks = [tinyTask('2031-03-05', 'NOR', 1150)];
    expect(describeIn({ helicopterTasks }, flight()).flights[0]!.stops[0]!.ifSoft).toBe(
      'If soft: take 3 of 4; NOR then falls below minimum on Wed 5 Mar: 250 L of 400 L. If closed: do not go, as if declined.',
    );
  });

  it('a cache that only ends short of its target stays above minimum all the same', () => {
    const caches = [tinyCache('NOR', { endTargetLitres: litres(1100) }), tinyCache('SOU')];
    const scenario = tinyTerritory({ caches });
    const [stop] = describeFlights(scenario, [flight()], 'operator').flights[0]!.stops;
    expect(stop!.ifSoft).toContain(
      'take 3 of 4; NOR stays above minimum but ends short of its target on Fri 7 Mar: 900 L of 1,100 L.',
    );
  });

  it('a strip closed to the type when soft: do not go', () => {
    const stripLimits = tinyTerritory().stripLimits.map((line) => ({ ...line, whenSoft: 'closed' as const }));
    expect(describeIn({ stripLimits }, flight()).flights[0]!.stops[0]).toMatchObject({
      drumsIfSoft: null,
      ifSoft: 'If soft or closed: do not go, as if declined.',
    });
  });

  it('half days: by departure before noon; the cache that runs short first is served first', () => {
    const helicopterTasks = [tinyTask(day1, 'SOU', 500), tinyTask('2031-03-05', 'NOR', 500)];
    const { flights } = describeIn(
      { helicopterTasks },
      flight(),
      flight({ id: 'F2', stops: [{ place: 'SOU', drums: 2 }] }),
    );
    expect(flights.map(({ id, departs, half }) => [id, departs, half])).toEqual([
      ['F2', '07:00', 'morning'],
      ['F1', '09:23', 'morning'],
    ]);
    const late = describeIn({ asOf: '2031-03-03T12:00Z' }, flight()).flights[0]!;
    expect(late).toMatchObject({ departs: '12:00', half: 'afternoon' });
  });

  it('drums on a booked flight cost their fuel and handling; the flight flies anyway', () => {
    const legs = [
      { from: 'HOM', to: 'NOR', passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(100) },
      { from: 'NOR', to: 'HOM', passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(0) },
    ];
    const bookedFlights = [
      {
        id: 'X1',
        date: day1,
        aircraft: 'T1',
        configuration: 'drums',
        purpose: 'mail',
        legs,
        heldHours: hours(2),
        departs: '10:00',
      },
    ];
    const [read] = describeIn(
      { bookedFlights },
      flight({ id: 'X1', stops: [{ place: 'NOR', drums: 1 }] }),
    ).flights;
    expect(read).toMatchObject({
      kind: 'booked',
      departs: '10:00',
      cost: { flight: 0, fuel: 30_000, handling: 900 },
    });
    expect(read!.legs[0]!.positions).toHaveLength(1);
    const base = (...flights: readonly StandingFlight[]) =>
      describeIn({ bookedFlights }, ...flights).bases[0]!;
    const without = base();
    expect(without.ownFuelLitres).toBeGreaterThan(0);
    expect(without, 'left at base is one sum, whether or not the booked flight is named').toEqual(
      base(flight({ id: 'X1', stops: [{ place: 'NOR', drums: 0 }] })),
    );
  });

  it('leaves out flights of days that the plan does not cover', () => {
    expect(describeIn({}, flight({ date: '2031-03-02' })).flights).toEqual([]);
  });

  it('what the bases give and have left', () => {
    const [home] = describeIn({}, flight()).bases;
    // 20 filled drums and 20,000 L of bulk; 10 filled a day from the second day on, 30 empties.
    expect(home).toMatchObject({ place: 'HOM', drumsTaken: 4, drumsReady: 50 });
    expect(home!.leftLitres).toBeCloseTo(24_000 - 800 - 170.1, 1);
  });
});

describe('a plan that is read', () => {
  it('passes the check of its own figures', () => {
    const scenario = tinyTerritory();
    const read = describeFlights(
      scenario,
      [flight(), flight({ id: 'F2', date: '2031-03-04', stops: [{ place: 'SOU', drums: 3 }] })],
      'minimum',
    );
    expect(checkPlan(scenario, read)).toEqual([]);
  });

  it('is found out where a figure is not what the scenario gives', () => {
    const scenario = tinyTerritory();
    const read = describeFlights(scenario, [flight()], 'minimum');
    const wrong = (changes: Partial<(typeof read.flights)[number]>) =>
      checkPlan(scenario, { ...read, flights: [{ ...read.flights[0]!, ...changes }] })[0]?.what;
    expect(
      wrong({ rampFuelLb: (read.flights[0]!.rampFuelLb - 10) as (typeof read.flights)[0]['rampFuelLb'] }),
    ).toContain('ramp fuel, lb 550; worked out again it is 560');
    expect(wrong({ legs: read.flights[0]!.legs.map((leg) => ({ ...leg, positions: ['R1'] })) })).toContain(
      'do not fit or do not balance',
    );
    const cost = {
      ...read.flights[0]!.cost,
      flight: (read.flights[0]!.cost.flight + 1) as typeof read.cost.flight,
    };
    expect(wrong({ cost })).toContain('flight cost');
    const caches = read.caches.map((cache) => ({
      ...cache,
      usable: cache.usable.map((level) => (level + 1) as typeof level),
    }));
    expect(checkPlan(scenario, { ...read, caches })[0]!.what).toContain('usable; worked out again');
  });
});
