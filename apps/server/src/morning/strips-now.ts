import {
  expectedSurface,
  knownSurface,
  latestReports,
  type Place,
  type SurfaceReport,
} from '@drumline/network';
import type { Scenario, StandingFlight } from '@drumline/planning';
import { epochMinutes, type IsoInstant, instantAt, minutes } from '@drumline/units';
import type { StripNow } from './morning-answer.js';

/** Each strip with what is known of it now, in the order of the territory. */
export const stripsNow = (scenario: Scenario): readonly StripNow[] => {
  const { surfaceReports, asOf, timeZone, policy, firstDay } = scenario;
  const known = knownSurface(surfaceReports, asOf, timeZone);
  const counts = expectedSurface(surfaceReports, asOf, { timeZone, ...policy.flyingDay });
  const latest = latestReports(surfaceReports, asOf);
  return scenario.places
    .filter(({ kind }) => kind === 'strip')
    .map((place) => {
      const report = latest.get(place.code) ?? null;
      return {
        place: place.code,
        name: place.name,
        surface: known(place),
        counts: counts(place, firstDay),
        reportedAt: report?.at ?? null,
        by: report?.by ?? null,
        reported: report?.state ?? null,
        staleAt: report === null ? null : staleAt(report, place),
        untilDate: report?.untilDate ?? null,
        radioTime: place.radioTime ?? null,
        tailwindLimitKt: place.runway?.tailwindLimitKt ?? null,
        stripClass: place.stripClass,
        drumsToday: landedOn(scenario.flights, firstDay, place.code),
        drumsADay: place.landingCapacityDrumsPerDay,
      };
    });
};

const staleAt = ({ at }: SurfaceReport, { surface }: Place): IsoInstant =>
  instantAt(minutes(epochMinutes(at) + surface.staleAfterHours * 60));

const landedOn = (flights: readonly StandingFlight[], day: string, code: string): number =>
  flights
    .filter(({ date }) => date === day)
    .flatMap(({ stops }) => stops)
    .filter(({ place }) => place === code)
    .reduce((sum, { drums }) => sum + drums, 0);
