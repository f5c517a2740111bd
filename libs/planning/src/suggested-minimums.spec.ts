import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { suggestedMinimums } from './suggested-minimums.js';
import { tinyTerritory } from './tiny-territory.js';

const of = (morningCancel: number, serviceLevel = 0.95) =>
  suggestedMinimums(
    tinyTerritory({ weather: [{ place: 'NOR', morningCancel, afternoonCancel: morningCancel }] }),
    serviceLevel,
  ).find(({ place }) => place === 'NOR')!;

describe('suggested minimum', () => {
  it('is use over the wait, safety stock and the reserve, added up', () => {
    const { minimum, leadTimeUse, safetyStock, reserve } = of(0.3);
    expect(minimum).toBeCloseTo(leadTimeUse + safetyStock + reserve, 9);
  });

  it('waits one day for a strip that is never shut, and two where half the mornings are', () => {
    expect(of(0.5).leadTimeUse).toBeCloseTo(2 * of(0).leadTimeUse, 9);
  });

  it('rises with the weather odds and with the service level', () => {
    expect(of(0.4).minimum).toBeGreaterThan(of(0.1).minimum);
    expect(of(0.3, 0.99).minimum).toBeGreaterThan(of(0.3, 0.9).minimum);
  });

  it('of a cache that nobody draws on is its reserve', () => {
    const quiet = tinyTerritory({ helicopterTasks: [], plannedUplifts: [] });
    for (const { minimum, reserve } of suggestedMinimums(quiet, 0.95)) expect(minimum).toBe(litres(reserve));
  });
});
