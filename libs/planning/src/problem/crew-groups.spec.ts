import { hours } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Pilot, Scenario } from '../scenario.js';
import { tinyPlace, tinyTerritory } from '../tiny-territory.js';
import { whyNotFit } from './crew-fit.js';
import { crewGroups } from './crew-groups.js';
import { territoryOf } from './territory.js';

const anyHours = () => Number.POSITIVE_INFINITY;

const pilot = (changes: Partial<Pilot> = {}): Pilot => ({
  id: 'P1',
  types: ['T'],
  stripClasses: [1, 2, 3],
  lastLandings: [],
  daysOff: [],
  flown: [],
  ...changes,
});
const { crew } = tinyTerritory().policy;
const steep = tinyPlace('STE', 61, { stripClass: 3 });
const fit = (who: Pilot, place = steep, date = '2031-03-04') => whyNotFit(who, 'T', [place], date, crew);

describe('crew fit', () => {
  it('crew fit: wants the rating, the class of every strip and a day on duty', () => {
    const nor = tinyPlace('NOR', 60.83);
    expect(fit(pilot(), nor)).toBeNull();
    expect(fit(pilot({ types: ['U'] }), nor)).toBe('P1 is not rated for type T');
    expect(fit(pilot({ stripClasses: [1] }), nor)).toBe('P1 is not cleared for NOR, class 2');
    expect(fit(pilot({ daysOff: ['2031-03-04'] }), nor)).toBe('P1 is off duty on 2031-03-04');
  });

  it('crew fit: a landing at that very strip counts for 90 days and not for 91', () => {
    const landed = pilot({ lastLandings: [{ place: 'STE', date: '2030-12-04' }] });
    expect(fit(landed, steep, '2031-03-04')).toBeNull();
    expect(fit(landed, steep, '2031-03-05')).toBe('P1 last landed at STE 91 days before, 90 allowed');
  });

  it('crew fit: no recorded landing counts as not recent, nor does one at another strip', () => {
    expect(fit(pilot())).toBe('P1 has no recorded landing at STE');
    expect(fit(pilot({ lastLandings: [{ place: 'NOR', date: '2031-03-01' }] }))).toBe(
      'P1 has no recorded landing at STE',
    );
  });
});

const groupsOf = (changes: Partial<Scenario>) => {
  const scenario = tinyTerritory(changes);
  return crewGroups(scenario, territoryOf(scenario));
};

describe('crew groups', () => {
  it('are one for all routes that the same pilots may fly', () => {
    const groups = groupsOf({});
    expect(groups.of('T', ['HOM', 'SOU', 'HOM'])).toBe(groups.of('T', ['HOM', 'NOR', 'HOM']));
    expect(groups.crews([], anyHours)[0]!.groupsByDay).toEqual([[0], [0], [0], [0], [0]]);
  });

  it('have nobody on a day when the only pilot is off', () => {
    const groups = groupsOf({ pilots: [pilot({ daysOff: ['2031-03-05'] })] });
    const group = groups.of('T', ['HOM', 'NOR', 'HOM']);
    expect([0, 1, 2, 3].map((day) => groups.anybodyOn(group, day))).toEqual([true, true, false, true]);
  });

  it('need nobody where the scenario has no pilots', () => {
    expect(groupsOf({ pilots: [] }).of('T', ['HOM', 'NOR', 'HOM'])).toBe(-1);
  });

  it('crew hours: what was flown in the six days before counts in the rolling week, the day before last', () => {
    const flown = [
      { date: '2031-03-02', blockHours: hours(5) },
      { date: '2031-02-25', blockHours: hours(3) },
      { date: '2031-02-24', blockHours: hours(7) },
    ];
    const [crewed] = groupsOf({ pilots: [pilot({ flown })] }).crews([], anyHours);
    expect(crewed!.rolling).toEqual({ days: 7, blockHours: 32, flownBefore: [3, 0, 0, 0, 0, 5] });
  });

  it('frozen flights: hours of a named pilot over the limit are facts, and leave none', () => {
    const groups = groupsOf({});
    const route = { id: 'F', day: 1, source: 0, stops: [1], legPacks: [0], blockHours: 7.5, dutyHours: 9 };
    const [crewed] = groups.crews([{ ...route, crewGroup: groups.named('P1') }], anyHours);
    expect(crewed!.blockHours).toEqual([7, 7.5, 7, 7, 7]);
  });
});
