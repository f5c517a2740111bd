import { hours } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { expectedSurface, knownSurface, latestReports } from './expected-surface.js';
import type { SurfaceReport, SurfaceState } from './place.js';

const ash = { code: 'ASH', surface: { staleAfterHours: hours(24), expected: 'dry' as const } };
const morning = { timeZone: 'Etc/GMT', firstDeparture: '07:00' };
const asOf = '2027-03-02T12:00Z';
const report = (state: SurfaceState, at: string, rest: Partial<SurfaceReport> = {}): SurfaceReport => ({
  place: 'ASH',
  state,
  at,
  by: 'radio',
  ...rest,
});
const days = ['2027-02-28', '2027-03-01', '2027-03-02', '2027-03-03', '2027-03-04'];
const expectedOn = (...reports: SurfaceReport[]) => {
  const surface = expectedSurface(reports, asOf, morning);
  return days.map((day) => surface(ash, day));
};

describe('known surface', () => {
  const knownAt = (at: string, ...reports: readonly SurfaceReport[]) =>
    knownSurface(reports, at, 'Etc/GMT')(ash);

  it('a report is good for the hours of its strip, and then the surface is unknown, not dry', () => {
    const dry = report('dry', '2027-03-01T07:00Z');
    expect(knownAt('2027-03-02T07:00Z', dry)).toBe('dry');
    expect(knownAt('2027-03-02T07:01Z', dry)).toBeNull();
    expect(knownAt('2027-03-02T07:00Z')).toBeNull();
  });

  it('one with a last day is good to the end of it; what is reported later is not known yet', () => {
    const soft = report('soft', '2027-03-01T07:00Z', { untilDate: '2027-03-03' });
    expect(knownAt('2027-03-03T23:59Z', soft)).toBe('soft');
    expect(knownAt('2027-03-04T00:00Z', soft)).toBeNull();
    expect(knownAt('2027-03-01T06:59Z', soft)).toBeNull();
  });
});

describe('the report that stands', () => {
  it('is the latest by its own time, in whatever order they came in; of one minute, the one that came last', () => {
    const [early, late] = [report('soft', '2027-03-01T06:40Z'), report('dry', '2027-03-01T06:52Z')];
    const again = report('damp', '2027-03-01T06:52Z');
    const standing = (...reports: readonly SurfaceReport[]) =>
      latestReports(reports, '2027-03-01T07:00Z').get(ash.code);
    expect([standing(late, early), standing(late, again), standing(again, late)]).toEqual([
      late,
      again,
      late,
    ]);
    expect(latestReports([late], '2027-03-01T06:51Z').size).toBe(0);
  });
});

describe('expected surface', () => {
  it('expected surface: without a report it is the expected state of the strip', () => {
    expect(expectedOn()).toEqual(['dry', 'dry', 'dry', 'dry', 'dry']);
    expect(expectedOn(report('soft', '2027-03-01T08:00Z', { place: 'BEK' }))).toEqual(expectedOn());
  });

  it('expected surface: a report covers its own day, and the next while its first departure is not too late', () => {
    expect(expectedOn(report('soft', '2027-03-01T07:00Z'))).toEqual(['dry', 'soft', 'soft', 'dry', 'dry']);
    expect(expectedOn(report('soft', '2027-03-01T06:59Z'))).toEqual(['dry', 'soft', 'dry', 'dry', 'dry']);
  });

  it('expected surface: a report with a last day covers every day up to it, and no day after', () => {
    const untilThird = report('soft', '2027-03-01T07:00Z', { untilDate: '2027-03-03' });
    expect(expectedOn(untilThird)).toEqual(['dry', 'soft', 'soft', 'soft', 'dry']);
    const untilItsDay = report('soft', '2027-03-01T20:00Z', { untilDate: '2027-03-01' });
    expect(expectedOn(untilItsDay)).toEqual(['dry', 'soft', 'dry', 'dry', 'dry']);
  });

  it('expected surface: the latest report counts, even where an older one would cover more days', () => {
    const older = report('closed', '2027-03-01T07:00Z', { untilDate: '2027-03-04' });
    const newer = report('damp', '2027-03-02T06:00Z');
    expect(expectedOn(newer, older)).toEqual(['dry', 'dry', 'damp', 'dry', 'dry']);
  });

  it('expected surface: a report written after asOf is not known yet', () => {
    expect(expectedOn(report('soft', '2027-03-02T12:01Z'))).toEqual(expectedOn());
    expect(expectedOn(report('soft', asOf))).toEqual(['dry', 'dry', 'soft', 'soft', 'dry']);
  });

  it('time zone: the day of a report is the local day', () => {
    const surface = expectedSurface([report('soft', '2027-03-01T23:30Z')], asOf, {
      timeZone: 'Etc/GMT-12',
      firstDeparture: '07:00',
    });
    // 11:30 on the second there, so 07:00 on the third is within 24 hours, and the first is the day before.
    expect(days.map((day) => surface(ash, day))).toEqual(['dry', 'dry', 'soft', 'soft', 'dry']);
  });
});
