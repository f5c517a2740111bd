import type { AircraftType, StripLimit } from '@drumline/loading';
import {
  closures,
  type DistanceTable,
  distanceTable,
  expectedSurface,
  type Place,
  type SurfaceState,
  windTable,
} from '@drumline/network';
import { daysFrom, type IsoDate, type Knots } from '@drumline/units';
import type { Scenario } from '../scenario.js';

/** The scenario's places, types and limits by code, and what each day of the plan makes of them. Days count from 0. */
export interface Territory {
  readonly dates: readonly IsoDate[];
  /** Throw an Error for a code that the scenario does not list. */
  readonly place: (code: string) => Place;
  readonly type: (id: string) => AircraftType;
  /** The operator's line for the type at the place; null: not approved there. */
  readonly limit: (place: string, type: string) => StripLimit | null;
  readonly distance: DistanceTable;
  readonly surface: (place: string, day: number) => SurfaceState;
  readonly leg: (from: string, to: string, day: number) => LegOfDay;
}

export interface LegOfDay {
  readonly windKt: Knots | null;
  /** Why it is not flown that day; null: open. */
  readonly closed: string | null;
}

export function territoryOf(scenario: Scenario): Territory {
  const dates = daysFrom(scenario.firstDay, scenario.days);
  const place = byCode('place', scenario.places, (each) => each.code);
  const limits = new Map(scenario.stripLimits.map((line) => [`${line.place} ${line.type}`, line]));
  return {
    dates,
    place,
    type: byCode('aircraft type', scenario.aircraftTypes, (each) => each.id),
    limit: (code, type) => limits.get(`${code} ${type}`) ?? null,
    distance: distanceTable(scenario.places, scenario.distances),
    surface: surfaceOf(scenario, dates, place),
    leg: legsOf(scenario, dates, place),
  };
}

function byCode<T>(what: string, list: readonly T[], codeOf: (each: T) => string): (code: string) => T {
  const known = new Map(list.map((each) => [codeOf(each), each]));
  return (code) => {
    const found = known.get(code);
    if (!found) throw new Error(`There is no ${what} ${code}; add it to the scenario or correct the code.`);
    return found;
  };
}

function surfaceOf(scenario: Scenario, dates: readonly IsoDate[], place: Territory['place']) {
  const hours = { timeZone: scenario.timeZone, ...scenario.policy.flyingDay };
  const expected = expectedSurface(scenario.surfaceReports, scenario.asOf, hours);
  const known = new Map<string, readonly SurfaceState[]>();
  return (code: string, day: number): SurfaceState => {
    const states = known.get(code) ?? dates.map((date) => expected(place(code), date));
    known.set(code, states);
    return states[day]!;
  };
}

function legsOf(scenario: Scenario, dates: readonly IsoDate[], place: Territory['place']) {
  const closed = closures(scenario.notices, { timeZone: scenario.timeZone, ...scenario.policy.flyingDay });
  const wind = windTable(scenario.winds);
  const known = new Map<string, readonly LegOfDay[]>();
  const daysOf = (from: string, to: string) =>
    dates.map((date) => {
      const notice = closed.ofLeg(place(from), place(to), date);
      const why = notice && `${from} to ${to} is closed by notice ${notice.id} (${notice.source})`;
      return { windKt: wind(from, to, date), closed: why };
    });
  return (from: string, to: string, day: number): LegOfDay => {
    const key = `${from} ${to}`;
    const days = known.get(key) ?? daysOf(from, to);
    known.set(key, days);
    return days[day]!;
  };
}
