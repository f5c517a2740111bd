import { describe, expect, it } from 'vitest';
import { buildPool, type PoolRules } from './build-pool.js';

// A base at 0 and three strips on a line; packs fall off by one with each stop.
const at = [0, 10, 20, -15];
const rules: PoolRules = {
  days: 2,
  starts: [{ kind: 'K', source: 0 }],
  stops: [1, 2, 3],
  distance: (from, to) => Math.abs(at[from] - at[to]),
  conditionsKey: () => 'dry',
  conditionsOf: (_, stops) => {
    const path = [0, ...stops, 0];
    const cost = path.slice(1).reduce((sum, to, leg) => sum + Math.abs(at[path[leg]] - at[to]), 0);
    return { blockHours: cost, dutyHours: cost, cost, ownUse: 0, legPacks: stops.map((_, leg) => 5 - leg) };
  },
  crewGroupOf: () => -1,
  maxStops: 2,
  neighbours: 2,
  detour: 1.5,
};
const stopsOf = (changed: Partial<PoolRules> = {}) =>
  buildPool({ ...rules, ...changed }).map(({ stops }) => stops.join('-'));

describe('buildPool', () => {
  it('takes every strip alone, and near strips together within the detour', () => {
    expect(stopsOf()).toEqual(['1', '1-2', '2-1', '2', '3']);
    expect(stopsOf({ detour: 3 })).toContain('1-3');
    expect(stopsOf({ maxStops: 1 })).toEqual(['1', '2', '3']);
  });

  it('leaves out an order of the same stops that another beats on every day', () => {
    const lastStopPoor = stopsOf({
      conditionsOf: (start, stops, day) => {
        const fair = rules.conditionsOf(start, stops, day);
        return fair && { ...fair, legPacks: stops[0] === 1 ? [5, 5] : [5, 2] };
      },
      maxStops: 2,
    });
    expect(lastStopPoor).toContain('1-2');
    expect(lastStopPoor).not.toContain('2-1');
  });

  it('leaves out a round that cannot bring a pack to every stop', () => {
    const onePack = stopsOf({
      conditionsOf: (start, stops, day) => {
        const fair = rules.conditionsOf(start, stops, day);
        return fair && { ...fair, legPacks: stops.map(() => 1) };
      },
    });
    expect(onePack).toEqual(['1', '2', '3']);
  });

  it('asks for conditions once for equal keys, and marks closed days', () => {
    let asked = 0;
    const routes = buildPool({
      ...rules,
      days: 4,
      maxStops: 1,
      conditionsKey: (_, stops, day) => (stops[0] === 1 && day === 2 ? null : day % 2),
      conditionsOf: (start, stops, day) => {
        asked++;
        const dry = rules.conditionsOf(start, stops, day);
        return dry && { ...dry, legPacks: dry.legPacks.map((packs) => packs - (day % 2)) };
      },
    });
    expect(routes[0].conditionByDay).toEqual([0, 1, -1, 1]);
    expect(asked).toBe(6);
  });

  it('a wet day that takes as much as a dry one is met by the same conditions', () => {
    const [route] = buildPool({ ...rules, conditionsKey: (_start, _stops, day) => day });
    expect(route.conditions).toHaveLength(1);
    expect(route.conditionByDay).toEqual([0, 0]);
  });
});
