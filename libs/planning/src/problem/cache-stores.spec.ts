import { litres, nauticalMiles } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyCache, tinyDrums, tinyPlace, tinyTerritory } from '../tiny-territory.js';
import { cacheStores } from './cache-stores.js';

const store = (place: string, changes: Partial<Scenario> = {}, frozen: readonly StandingFlight[] = []) =>
  cacheStores(tinyTerritory(changes), frozen).find(({ id }) => id === place)!;

const hold = { reason: 'water found', by: 'QA', at: '2031-03-01T08:00Z' };

describe('a cache as a store', () => {
  it('opens at the usable stock: held drums do not count', () => {
    const drums = tinyDrums('NOR', 4, 100).map((drum, i) => (i === 0 ? { ...drum, held: hold } : drum));
    expect(store('NOR').opening).toBe(800);
    expect(store('NOR', { drums }).opening).toBe(600);
  });

  it('capacity: held drums take their room', () => {
    const drums = tinyDrums('NOR', 4, 100).map((drum, i) => (i === 0 ? { ...drum, held: hold } : drum));
    expect(store('NOR', { drums }).capacity).toEqual([2200, 2200, 2200, 2200, 2200]);
  });

  it('retest date: drums leave usable the day after it, and take their room from then on', () => {
    const batches = tinyTerritory().batches.map((batch) => ({ ...batch, retestDue: '2031-03-04' }));
    const late = store('NOR', { batches, helicopterTasks: [] });
    expect(late.losses).toEqual([0, 0, 800, 0, 0]);
    expect(late.capacity).toEqual([2400, 2400, 2400, 1600, 1600]);
  });

  it('is drawn by helicopter tasks and planned uplifts on their day, down to the medevac reserve', () => {
    const plannedUplifts = [{ date: '2031-03-04', place: 'NOR', litres: litres(150), for: 'T1 top-up' }];
    const caches = [tinyCache('NOR', { medevacReserveLitres: litres(200) })];
    const drawn = store('NOR', { plannedUplifts, caches });
    expect(drawn.demand).toEqual([0, 650, 0, 0, 0]);
    expect(drawn.floor).toBe(200);
  });

  it('order of a day: a sling leaves one store and arrives in the other', () => {
    const slings: Scenario['slings'] = [
      {
        date: '2031-03-05',
        helicopter: 'H',
        from: 'NOR',
        to: 'SOU',
        drums: 2,
        distanceNm: nauticalMiles(12),
      },
    ];
    expect(store('NOR', { slings }).losses).toEqual([0, 0, 400, 0, 0]);
    expect(store('SOU', { slings }).arrivals).toEqual([0, 0, 400, 0, 0]);
  });

  it('frozen flights: their drums arrive as constants and use up the hands of the day', () => {
    const flight = tinyFlight('2031-03-04', 'NOR', 3);
    expect(store('NOR', {}, [flight]).arrivals).toEqual([0, 600, 0, 0, 0]);
    expect(store('NOR', {}, [flight]).packsPerDay).toEqual([8, 5, 8, 8, 8]);
  });

  it('frozen flights: drums on hold arrive as no litre, take their room, and use up the hands of the day', () => {
    const flight = tinyFlight('2031-03-04', 'NOR', 3);
    const held = { ...flight, stops: flight.stops.map((stop) => ({ ...stop, heldDrums: 2 })) };
    const nor = store('NOR', {}, [held]);
    expect(nor.arrivals).toEqual([0, 200, 0, 0, 0]);
    expect(nor.capacity).toEqual([2400, 2000, 2000, 2000, 2000]);
    expect(nor.packsPerDay).toEqual([8, 5, 8, 8, 8]);
  });

  it('takes drums to the last day of its permit, and none after', () => {
    const caches = [tinyCache('NOR', { permitUntil: '2031-03-05' })];
    expect(store('NOR', { caches }).packsPerDay).toEqual([8, 8, 8, 0, 0]);
  });

  it('landing capacity: takes any number of drums where hands do not limit', () => {
    const places = [tinyPlace('HOM', 60), tinyPlace('NOR', 60.83, { landingCapacityDrumsPerDay: null })];
    expect(store('NOR', { places, caches: [tinyCache('NOR')] }).packsPerDay).toBeNull();
  });
});

function tinyFlight(date: string, place: string, drums: number): StandingFlight {
  return {
    id: `${place} ${date}`,
    state: 'approved',
    date,
    aircraft: 'T1',
    from: 'HOM',
    stops: [{ place, drums }],
    to: 'HOM',
  };
}
