import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { plannedBars, plannedLoadOfFlight } from '../load-sheet/planned-load.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { flightCard } from './flight-card.js';

const flight = (changes: Partial<StandingFlight> = {}): StandingFlight => ({
  id: 'F1',
  state: 'offered',
  date: '2031-03-03',
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums: 4 }],
  to: 'HOM',
  ...changes,
});
const softNor = [{ place: 'NOR', state: 'soft' as const, at: '2031-03-03T04:00Z', by: 'helper' }];
const dryNor = [{ ...softNor[0]!, state: 'dry' as const }];
const cardOf = (changes: Partial<Scenario> = {}, ...flights: readonly StandingFlight[]) =>
  flightCard(tinyTerritory({ flights: flights.length > 0 ? flights : [flight()], ...changes }), 'F1')!;

describe('the decision card', () => {
  it('has every limit of the legs with drums aboard, the one that binds first', () => {
    const [leg, ...others] = cardOf({ surfaceReports: dryNor }).legs;
    expect(others).toEqual([]);
    expect(leg).toMatchObject({ from: 'HOM', to: 'NOR', drumsAboard: 4, drumsPossible: 4 });
    expect(leg!.limits[0]).toMatchObject({ name: 'drum positions', positions: 4, spareLb: 0, binds: true });
    // 4,000 lb operating + 4 x 180 kg (1,587 lb) + 400 lb on landing, of 6,800 lb.
    const landing = leg!.limits.find(({ name }) => name === 'strip landing limit')!;
    expect(landing).toMatchObject({ place: 'NOR', limitLb: 6800, binds: false });
    expect(Math.round(landing.spareLb)).toBe(813);
  });

  it('with fewer drums than possible nothing binds', () => {
    const [leg] = cardOf({}, flight({ stops: [{ place: 'NOR', drums: 2 }] })).legs;
    expect(leg).toMatchObject({ drumsAboard: 2, drumsPossible: 4 });
    expect(leg!.limits.filter(({ binds }) => binds)).toEqual([]);
  });

  it('a soft strip: 3 of 4 drums may go, with what binds then, what they cost, and the dry limit beside it', () => {
    const card = cardOf({ surfaceReports: softNor });
    expect(card.legs[0]!.limits[0]).toMatchObject({
      name: 'strip landing limit',
      surface: 'soft',
      limitLb: 5900,
      binds: true,
    });
    expect(Math.round(card.legs[0]!.limits[0]!.spareLb)).toBe(-87);
    expect(card.legs[0]!.limits[1]).toMatchObject({ surface: 'dry', limitLb: 6800, binds: false });
    expect(card.fewer).toMatchObject({ drums: 3, kg: 540, stops: [{ place: 'NOR', drums: 3 }] });
    expect(card.fewer!.cost).toMatchObject({ flight: card.load.cost.flight, fuel: 90_000 });
    expect(card.heard).toEqual([
      { place: 'NOR', counts: 'soft', report: softNor[0], staleAt: expect.any(String), isStale: false },
    ]);
  });

  it('a strip that is closed has no soft landing limit to compare: the card says that it is closed, and that no drum may go', () => {
    const { legs, fewer } = cardOf({ surfaceReports: [{ ...softNor[0]!, state: 'closed' as const }] });
    expect(legs[0]).toMatchObject({ to: 'NOR', surface: 'closed', drumsAboard: 4, drumsPossible: 0 });
    expect(legs[0]!.limits.map(({ name }) => name)).not.toContain('strip landing limit');
    expect(fewer).toMatchObject({ drums: 0, stops: [] });
  });

  it('a strip nobody has heard of counts as soft: its soft landing limit binds, as on Load, and all drums still go as planned', () => {
    const card = cardOf();
    const [soft, positions] = card.legs[0]!.limits;
    expect(soft).toMatchObject({ name: 'strip landing limit', surface: 'soft', limitLb: 5900, binds: true });
    expect(soft!.spareLb).toBe(-87);
    expect(positions).toMatchObject({ name: 'drum positions', binds: false });
    expect(card.legs[0]!.limits.find(({ surface }) => surface === 'dry')).toBeDefined();
    expect(card.fewer).toBeNull();
    const onLoad = plannedLoadOfFlight(tinyTerritory({ flights: [flight()] }), flight());
    if (!onLoad.found) throw new Error(onLoad.why);
    const [bar] = plannedBars(onLoad.load, { NOR: 'unknown' });
    const nearest = bar!.limits.find(({ binds }) => binds)!;
    expect([bar!.boundByCount, nearest.name, nearest.surface, nearest.spareLb]).toEqual([
      ...[null, 'strip landing limit', 'soft', soft!.spareLb],
    ]);
  });

  it('the positions bind, as on Load, where the soft landing of a strip nobody has heard of leaves more', () => {
    const stripLimits = tinyTerritory().stripLimits.map((line) => ({
      ...line,
      whenSoft: { takeoffLessLb: pounds(100), landingLessLb: pounds(300) },
    }));
    const [first] = cardOf({ stripLimits }).legs[0]!.limits;
    expect(first).toMatchObject({ name: 'drum positions', binds: true });
  });

  it('closed to the type when soft: none may go', () => {
    const stripLimits = tinyTerritory().stripLimits.map((line) => ({ ...line, whenSoft: 'closed' as const }));
    const card = cardOf({ stripLimits, surfaceReports: softNor });
    expect(card.closed).toContain('NOR');
    expect(card.fewer).toMatchObject({ drums: 0, stops: [] });
  });

  it('of two strips the drums for the last are left behind first', () => {
    const stops = [
      { place: 'NOR', drums: 2 },
      { place: 'SOU', drums: 4 },
    ];
    expect(cardOf({}, flight({ stops })).fewer!.stops).toEqual([
      { place: 'NOR', drums: 2 },
      { place: 'SOU', drums: 2 },
    ]);
  });

  it('all drums may go, nothing was heard', () => {
    const card = cardOf();
    expect(card.fewer).toBeNull();
    expect(card.heard[0]).toMatchObject({ counts: 'dry', report: null, staleAt: null });
  });

  it('says who is fit and why the others are not', () => {
    const [one] = tinyTerritory().pilots;
    const pilots = [one!, { ...one!, id: 'P2', daysOff: ['2031-03-03'] }];
    expect(cardOf({ pilots }).crew).toEqual([
      { id: 'P1', whyNot: null },
      { id: 'P2', whyNot: 'P2 is off duty on 2031-03-03' },
    ]);
  });

  it('is of flights of the days ahead only', () => {
    expect(flightCard(tinyTerritory(), 'F1')).toBeNull();
    expect(flightCard(tinyTerritory({ flights: [flight({ date: '2031-03-02' })] }), 'F1')).toBeNull();
  });
});
