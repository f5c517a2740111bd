import { type AlternateStrip, alternatesOf, type SheetFlight } from '@drumline/loading';
import { describe, expect, it } from 'vitest';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyCache, tinyPlace, tinyTerritory } from '../tiny-territory.js';
import { alternatesOfFlight } from './alternates-of-flight.js';
import { loadOfFlight } from './load-of-flight.js';

/** T1 takes two drums to NOR on Monday 3 March; SOU (class 2) is the only other strip. */
const going: StandingFlight = {
  id: 'P1',
  state: 'given',
  date: '2031-03-03',
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums: 2 }],
  to: 'HOM',
};
const dry = { place: 'SOU', state: 'dry' as const, at: '2031-03-03T04:00Z', by: 'helper' };
const strips: Partial<Scenario> = { surfaceReports: [dry] };

const stripsOf = (changes: Partial<Scenario> = {}, of: Partial<SheetFlight> = {}) => {
  const scenario = tinyTerritory({ ...strips, ...changes });
  const { id, aircraft, date } = going;
  const flight = { id, aircraft, date, departs: '09:00', pilot: 'P1', version: 1, replaces: null, ...of };
  const picked = ['0300', '0301'].map((number) => ({ number, place: 'NOR', position: null }));
  const load = loadOfFlight(scenario, going, picked);
  if (!load.found) throw new Error(load.why);
  const [out, home] = alternatesOfFlight(scenario, flight, load.load);
  return { load: load.load, out: out!, home: home! };
};

const found = (...of: Parameters<typeof stripsOf>): AlternateStrip =>
  stripsOf(...of).out.find(({ end }) => end.place.code === 'SOU')!;

describe('a base is an alternate', () => {
  it('home on the way out, first and with room for all; on the way home the strips are', () => {
    const { load, out, home } = stripsOf();
    expect(alternatesOf(load, 0, out)[0]).toMatchObject({
      place: 'HOM',
      isHome: true,
      roomDrums: null,
      whyNot: null,
    });
    expect(home.map(({ end }) => end.place.code).sort()).toEqual(['NOR', 'SOU']);
  });

  it('home needs no more of the crew than the flight itself, a strip does', () => {
    const { load, out } = stripsOf({}, { pilot: null });
    expect(alternatesOf(load, 0, out).map(({ place, whyNot }) => [place, whyNot])).toEqual([
      ['HOM', null],
      ['SOU', 'no pilot is named yet'],
    ]);
  });

  it('home is as far as the leg was long', () => {
    const { load, out } = stripsOf();
    const home = out.find(({ isBase }) => isBase)!;
    expect(home).toMatchObject({ homeNm: 0, distanceNm: load.request.legs[0]!.distanceNm });
  });
});

const souOfClass = (stripClass: 2 | 3) =>
  tinyTerritory().places.map((place) => (place.code === 'SOU' ? { ...place, stripClass } : place));
const pilotOf = (changes: Partial<Scenario['pilots'][number]>) => [
  { ...tinyTerritory().pilots[0]!, ...changes },
];

describe('an alternate is for the crew that flies', () => {
  it('a strip of a class that the pilot is cleared for', () => {
    expect(found().whyNot).toBeNull();
  });

  it('not one of a class beyond the pilot', () => {
    expect(found({ places: souOfClass(3) }).whyNot).toBe('P1 is not cleared for SOU, class 3');
  });

  it('nor one where the last landing is too long ago', () => {
    const { policy } = tinyTerritory();
    const crew = { ...policy.crew, recencyDays: [{ stripClass: 3 as const, days: 90 }] };
    const landed = (date: string) =>
      found({
        places: souOfClass(3),
        policy: { ...policy, crew },
        pilots: pilotOf({ stripClasses: [1, 2, 3], lastLandings: [{ place: 'SOU', date }] }),
      }).whyNot;
    expect(landed('2030-12-03')).toBeNull();
    expect(landed('2030-12-02')).toBe('P1 last landed at SOU 91 days before, 90 allowed');
  });

  it('none before a pilot is named', () => {
    expect(found({}, { pilot: null }).whyNot).toBe('no pilot is named yet');
  });
});

describe('an alternate is open on the day', () => {
  it('a notice closes it, or the way to it', () => {
    const notice = {
      id: 'N1',
      places: ['SOU'],
      from: '2031-03-03T00:00Z',
      until: '2031-03-04T00:00Z',
      source: 'fire watch',
      text: 'smoke',
    };
    expect(found({ notices: [notice] }).whyNot).toBe('NOR to SOU is closed by notice N1 (fire watch)');
  });

  it('and reached by the end of its day: off at 09:00 it is, off at 16:00 it is not', () => {
    expect(found({}, { departs: '09:00' }).whyNot).toBeNull();
    expect(found({}, { departs: '16:00' }).whyNot).toMatch(/^cannot be reached by 1\d:\d\d$/);
  });
});

describe('the surface of an alternate is the one known when the flight leaves', () => {
  it('a report that is fresh then counts', () => {
    expect(found()).toMatchObject({ isSurfaceUnknown: false, end: { surface: 'dry' } });
  });

  it('without one it is unknown, and unknown stands as soft, whatever the planner expects', () => {
    const soft = { isSurfaceUnknown: true, end: { surface: 'soft' } };
    expect(found({ surfaceReports: [] })).toMatchObject(soft);
    const yesterday = { ...dry, at: '2031-03-02T08:00Z' };
    // Fresh for 24 h: at 05:00, when it is looked at, but not at 09:00.
    expect(found({ surfaceReports: [yesterday] })).toMatchObject(soft);
    expect(found({ surfaceReports: [yesterday] }, { departs: '07:30' }).isSurfaceUnknown).toBe(false);
  });

  it('closed is closed', () => {
    expect(found({ surfaceReports: [{ ...dry, state: 'closed' }] }).end.surface).toBe('closed');
  });
});

describe('room at an alternate', () => {
  const other = (state: StandingFlight['state'], drums: number): StandingFlight => ({
    ...going,
    id: 'P2',
    state,
    stops: [{ place: 'SOU', drums }],
  });

  it('is what the site holds beside what stands there: 12 less 3', () => {
    expect(found({ places: [...tinyTerritory().places.slice(0, 2), unlimited] }).roomDrums).toBe(9);
  });

  it('and no more than can be unloaded there in a day: 8', () => {
    expect(found().roomDrums).toBe(8);
  });

  it('less what other flights of the day bring: one that is home takes no more room on the site', () => {
    expect(found({ flights: [other('approved', 4)] }).roomDrums).toBe(4);
    const roomy = { caches: [tinyCache('NOR'), tinyCache('SOU', { capacityDrums: 8 })] };
    expect(found({ ...roomy, flights: [other('approved', 3)] }).roomDrums).toBe(2);
    expect(found({ ...roomy, flights: [other('home', 3)] }).roomDrums).toBe(5);
    expect(found({ flights: [{ ...other('approved', 4), date: '2031-03-04' }] }).roomDrums).toBe(8);
  });
});

const unlimited = tinyPlace('SOU', 58.67, { landingCapacityDrumsPerDay: null });
