import { expectedSurface, latestReports, type SurfaceReport } from '@drumline/network';
import { daysFrom } from '@drumline/units';
import type { Scenario } from './scenario.js';

type Surfaces = Pick<
  Scenario,
  'surfaceReports' | 'places' | 'asOf' | 'timeZone' | 'policy' | 'firstDay' | 'days'
>;

/**
 * Reports that change what a plan was made on: of each place the one that stands, where by it the surface of a day ahead is
 * another than by the reports of the plan. One that a later report outranks, or that says what was expected, is none.
 */
export const heardSince = (
  scenario: Surfaces,
  ofThePlan: readonly SurfaceReport[],
): readonly SurfaceReport[] => {
  const { surfaceReports, asOf, timeZone, policy, firstDay, days, places } = scenario;
  const surfaceBy = (reports: readonly SurfaceReport[]) =>
    expectedSurface(reports, asOf, { timeZone, ...policy.flyingDay });
  const [before, now] = [surfaceBy(ofThePlan), surfaceBy(surfaceReports)];
  const ahead = daysFrom(firstDay, days);
  const standing = latestReports(surfaceReports, asOf);
  return places.flatMap((place) => {
    const report = standing.get(place.code);
    const changes = ahead.some((day) => before(place, day) !== now(place, day));
    return report !== undefined && changes ? [report] : [];
  });
};
