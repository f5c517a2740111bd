import { hours, knots, litres, minutes, nauticalMiles } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { FlightToCome } from '../cache-outlooks.js';
import type { Scenario, SlingMove } from '../scenario.js';
import { tinyCache, tinyDrums, tinyTask, tinyTerritory } from '../tiny-territory.js';
import { slingRemedies } from './sling-remedies.js';

// H works at NOR every day. SOU has 600 L, wants 400 L, and 500 L are drawn there on day 3; 4 drums are slung from NOR
// to SOU on day 4: out and back 60 NM in 1 h, twice, with 15 min a lift.
const day = (number: number) => `2031-03-0${number + 2}`;
const sling: SlingMove = {
  date: day(4),
  helicopter: 'H',
  from: 'NOR',
  to: 'SOU',
  drums: 4,
  distanceNm: nauticalMiles(30),
};
const work = (number: number, place: string, flown: number) => ({
  ...tinyTask(day(number), place, 0),
  hours: hours(flown),
});
const daysAtNor = [1, 2, 3, 4, 5].map((number) => work(number, 'NOR', 2));
const territory = (changes: Partial<Scenario> = {}) =>
  tinyTerritory({
    helicopters: [
      {
        id: 'H',
        name: 'helicopter',
        fuelLitresPerHour: 100,
        drumsPerLift: 3,
        slinging: { speedKt: knots(60), minutesPerLift: minutes(15), reference: 'tiny manual' },
      },
    ],
    drums: [...tinyDrums('NOR', 8, 100), ...tinyDrums('SOU', 3, 200), ...tinyDrums('HOM', 20, 300)],
    helicopterTasks: daysAtNor,
    plannedUplifts: [{ date: day(3), place: 'SOU', litres: litres(500), for: 'T1 top-up' }],
    slings: [sling],
    ...changes,
  });
const remedy = (changes: Partial<Scenario> = {}, flights: readonly FlightToCome[] = []) =>
  slingRemedies(territory(changes), flights)[0];
const whyNot = (changes: Partial<Scenario>) => {
  const { move, notOn } = remedy(changes)!;
  return { on: move?.date ?? null, notOn: notOn.map(({ why }) => why) };
};

describe('a cache that falls short before its sling', () => {
  it('the sling is brought forward by the one day that is needed, and both caches are shown', () => {
    expect(remedy()).toMatchObject({
      place: 'SOU',
      shortOn: day(3),
      shortLitres: 100,
      minimumLitres: 400,
      sling,
      notOn: [],
      move: {
        date: day(3),
        effect: 'removes',
        fed: { before: { date: day(3), litres: 100 }, after: { date: day(3), litres: 900 } },
        source: { place: 'NOR', before: { litres: 1600 }, after: { litres: 800 } },
      },
    });
  });

  it('says the lifts, the hours under the sling and their fuel, and the hours of both days', () => {
    const { work, hoursThen, hoursOwnDay } = remedy()!.move!;
    expect(work).toEqual({ helicopter: 'H', lifts: 2, hours: 2.5, litres: 250 });
    expect([hoursThen, hoursOwnDay]).toEqual([2 + 2.5, 2 + 2.5]);
  });

  it('a day more where the helicopter would fly too long, with the figure', () => {
    expect(whyNot({ helicopterTasks: [...daysAtNor, work(3, 'NOR', 3)] })).toEqual({
      on: day(2),
      notOn: ['H would fly 7.5 h, 7.0 h a day by tiny crew rules'],
    });
  });

  it('a day more where it would fly too long in 7 days', () => {
    const helicopterTasks = [1, 2, 3, 4, 5].map((number) => work(number, 'NOR', 6));
    const { on, notOn } = whyNot({ helicopterTasks, slings: [{ ...sling, drums: 3 }] });
    expect([on, notOn[0]]).toEqual([null, 'H would fly 7.3 h, 7.0 h a day by tiny crew rules']);
    const crew = { ...territory().policy.crew, flightHoursPerDay: hours(8) };
    expect(
      whyNot({
        helicopterTasks: [...helicopterTasks, work(6, 'NOR', 1)],
        days: 6,
        slings: [{ ...sling, drums: 3 }],
        policy: { ...territory().policy, crew },
      }).notOn,
    ).toContain('H would fly 32.3 h in 7 days, 32.0 h by tiny crew rules');
  });

  it.each<readonly [string, Partial<Scenario>]>([
    ['no flying that day', { noFlyingDays: [day(3)] }],
    [
      'H is away: crew off',
      {
        helicopters: [
          {
            id: 'H',
            name: 'helicopter',
            fuelLitresPerHour: 100,
            drumsPerLift: 3,
            absences: [{ from: day(3), until: day(3), reason: 'crew off' }],
          },
        ],
      },
    ],
  ])('a day more where %s', (why, changes) => {
    expect(whyNot(changes)).toEqual({ on: day(2), notOn: [why] });
  });

  it('not while the helicopter works elsewhere', () => {
    const helicopterTasks = [work(1, 'HOM', 2), work(4, 'NOR', 2)];
    expect(whyNot({ helicopterTasks })).toEqual({
      on: null,
      notOn: ['H is at HOM by then', 'H is at HOM by then', 'H works at HOM that day'],
    });
  });

  it('not before the drums stand at the strip, and not so that the strip falls below its own minimum', () => {
    const landing = (number: number): FlightToCome => ({
      id: 'F1',
      state: 'offered',
      date: day(number),
      half: 'morning',
      needsDecision: null,
      stops: [{ place: 'NOR', drums: 4 }],
    });
    const few = { drums: [...tinyDrums('NOR', 2, 100), ...tinyDrums('SOU', 3, 200)] };
    expect(remedy(few, [landing(3)])?.move?.date).toBe(day(3));
    expect(remedy(few, [landing(4)])).toMatchObject({
      move: null,
      notOn: [{ date: day(3), why: 'too few sealed drums that are fit stand at NOR by then' }, {}, {}],
    });
    const poor = { drums: [...tinyDrums('NOR', 5, 100), ...tinyDrums('SOU', 3, 200)] };
    expect(remedy(poor)).toMatchObject({
      move: null,
      notOn: [{ why: 'NOR would fall to 200 L, minimum 400 L' }, {}, {}],
    });
  });

  it('not where the pad has no room', () => {
    const caches = [tinyCache('NOR'), tinyCache('SOU', { capacityDrums: 6 })];
    expect(remedy({ caches })).toMatchObject({ move: null, notOn: [{ date: day(3) }, {}, {}] });
    expect(remedy({ caches })?.notOn[0]?.why).toBe('SOU has no room for them by then');
  });

  it('lessens a shortage that no day removes', () => {
    const caches = [tinyCache('NOR'), tinyCache('SOU', { minimumLitres: litres(1000) })];
    expect(remedy({ caches })?.move).toMatchObject({ date: day(1), effect: 'lessens' });
  });

  it('there is none for a cache that stays above its minimum, nor for one that no later sling feeds', () => {
    expect(remedy({ plannedUplifts: [] })).toBeUndefined();
    expect(remedy({ slings: [{ ...sling, date: day(3) }] })).toBeUndefined();
    expect(remedy({ slings: [] })).toBeUndefined();
  });
});
