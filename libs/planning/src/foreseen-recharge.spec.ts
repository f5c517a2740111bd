import { cents, litres, nauticalMiles } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { type CostedFlight, deliveredCosts, foreseenRecharge } from './foreseen-recharge.js';
import type { Programme } from './scenario.js';
import { tinyTask } from './tiny-territory.js';

const flight = (place: string, drums: number, total: number): CostedFlight => ({
  stops: [{ place, drums }],
  cost: { total: cents(total), litres: litres(drums * 200) },
});
const sling = {
  date: '2031-03-05',
  helicopter: 'H',
  from: 'NOR',
  to: 'PAD',
  drums: 3,
  distanceNm: nauticalMiles(15),
};

describe('what fuel is delivered for', () => {
  it('is the mean of the flights to a place, by drums; at a pad, that of its strip', () => {
    // 800 L for 3,200.00 and 400 L for 1,000.00: 3.50 a litre.
    const costs = deliveredCosts([flight('NOR', 4, 320_000), flight('NOR', 2, 100_000)], [sling]);
    expect([costs.get('NOR'), costs.get('PAD'), costs.has('SOU')]).toEqual([350, 350, false]);
  });
});

describe('what is foreseen to be charged on', () => {
  const costs = new Map([['NOR', 350]]);
  const helicopterTasks = [tinyTask('2031-03-04', 'NOR', 300), tinyTask('2031-03-05', 'NOR', 100)];
  const charged = (recharge: Programme['recharge'], tasks = helicopterTasks) =>
    foreseenRecharge({ code: 'P', name: 'survey', recharge }, { helicopterTasks: tasks }, costs);

  it('follows the rule of the programme', () => {
    expect(charged({ kind: 'delivered cost', marginPercent: 8 })).toBe(151_200);
    expect(charged({ kind: 'fixed price', centsPerLitre: 520 })).toBe(208_000);
    expect(charged({ kind: 'not recharged' })).toBe(0);
  });

  it('at delivered cost is not known where nothing is flown to one of its places', () => {
    const tasks = [...helicopterTasks, tinyTask('2031-03-06', 'SOU', 50)];
    expect(charged({ kind: 'delivered cost', marginPercent: 8 }, tasks)).toBeNull();
    expect(charged({ kind: 'fixed price', centsPerLitre: 520 }, tasks)).toBe(234_000);
  });
});
