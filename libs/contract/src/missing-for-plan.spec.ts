import { describe, expect, it } from 'vitest';
import { missingForPlan } from './missing-for-plan.js';
import { tinyDocument } from './tiny-document.js';

const whatOf = (document: Record<string, unknown>) => missingForPlan(document).map(({ what }) => what);

describe('what is missing for a plan', () => {
  it('is nothing for the tiny territory', () => {
    expect(missingForPlan(tinyDocument())).toEqual([]);
  });

  it('is everything, in the order in which it is filled in, for an empty territory', () => {
    const empty = Object.fromEntries(
      Object.entries(tinyDocument()).flatMap(([field, value]) => (Array.isArray(value) ? [[field, []]] : [])),
    );
    expect(missingForPlan({ format: 'drumline-scenario/1', ...empty }).map(({ at }) => at)).toEqual([
      'settings',
      'policy',
      'places',
      'places',
      'bases',
      'caches',
      'aircraftTypes',
      'aircraft',
      'pilots',
      'bases',
    ]);
  });

  it('names a pilot where those there are fly none of the types', () => {
    const document = tinyDocument();
    document.pilots[0].types = [];
    expect(whatOf(document)[0]).toBe('Missing: a pilot of a type that you have.');
  });

  it('names fuel where a base has an empty tank and no filled drum', () => {
    const document = tinyDocument();
    document.bases[0].bulkLitres = 0;
    document.drums = document.drums.filter(
      ({ place }: { place: string }) => place !== document.bases[0].place,
    );
    expect(whatOf(document)).toContain('Missing: fuel at a base.');
  });

  it('says a fault with its place where all parts are there', () => {
    const document = tinyDocument();
    document.caches[0].minimumLitres = '800';
    expect(missingForPlan(document)).toContainEqual({
      at: 'caches',
      of: document.caches[0].place,
      field: 'minimumLitres',
      what: '"800" is not a number.',
      next: 'Write the figure without quotes or unit.',
    });
  });

  it('names a place that no type may land at, a limit by place and type, and a field of the territory itself', () => {
    const document = tinyDocument();
    const [limit, ...others] = document.stripLimits;
    document.stripLimits = others;
    expect(missingForPlan(document)).toContainEqual({
      at: 'places',
      of: limit.place,
      field: '',
      what: `no type has strip limits at ${limit.place}.`,
      next: 'Add a line to stripLimits, or make it a pad.',
    });
    document.stripLimits = [{ ...limit, takeoffLb: '7' }, ...others];
    document.offeredDays = document.days + 1;
    expect(missingForPlan(document).map(({ at, of, field }) => [at, of, field])).toContainEqual([
      'stripLimits',
      `${limit.place} ${limit.type}`,
      'takeoffLb',
    ]);
    document.stripLimits = [limit, ...others];
    expect(missingForPlan(document).map(({ at, of, field }) => [at, of, field])).toEqual([
      ['settings', '', 'offeredDays'],
    ]);
  });
});
