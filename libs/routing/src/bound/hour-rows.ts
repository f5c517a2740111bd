import type { Problem, Vehicle } from '../problem.js';
import type { Draft } from './draft.js';
import { groupBy } from './group-by.js';

/** Vehicles of one kind at one home, their hours added up. */
export interface VehicleGroup {
  readonly kind: string;
  readonly home: number;
  /** Rows in which a route counts its block and duty hours, by day; and the hours there are. */
  readonly blockRow: readonly number[];
  readonly dutyRow: readonly number[];
  readonly blockHours: readonly number[];
  readonly dutyHours: readonly number[];
}

/** Groups of vehicles with their rows. That one vehicle must make a whole route is relaxed. */
export function vehicleGroups(draft: Draft, problem: Problem): VehicleGroup[] {
  const groups = groupBy(problem.vehicles, ({ kind, home }) => `${kind} ${home}`);
  return [...groups.values()].map((vehicles) => vehicleGroup(draft, vehicles, problem.days));
}

function vehicleGroup(draft: Draft, vehicles: readonly Vehicle[], days: number): VehicleGroup {
  const perDay = (hours: (vehicle: Vehicle) => readonly number[]) =>
    Array.from({ length: days }, (_, day) => vehicles.reduce((sum, vehicle) => sum + hours(vehicle)[day], 0));
  const blockHours = perDay((vehicle) => vehicle.blockHours);
  const dutyHours = perDay((vehicle) => vehicle.dutyHours);
  const rolling = vehicles.flatMap((vehicle) => vehicle.rolling?.days ?? []);
  return {
    kind: vehicles[0].kind,
    home: vehicles[0].home,
    blockHours,
    dutyHours,
    blockRow: blockHours.map((hours) => draft.row(Number.NEGATIVE_INFINITY, hours)),
    dutyRow: rollingRows(draft, dutyHours, [...new Set(rolling)], (length, from) =>
      vehicles.reduce((sum, { dutyHours: daily, rolling: limit }) => {
        const within = daily.slice(from, from + length).reduce((total, hours) => total + hours, 0);
        return sum + (limit?.days === length ? Math.min(within, limit.dutyHours) : within);
      }, 0),
    ),
  };
}

/**
 * One row a day, at most `daily` hours, of which any `length` days together are at most `limit(length, from)`. The
 * hours of a day are a column of their own, so that a route appears once however many windows it falls in. Windows
 * may begin up to `daysBefore` days before the horizon.
 */
export function rollingRows(
  draft: Draft,
  daily: readonly number[],
  lengths: readonly number[],
  limit: (length: number, from: number) => number,
  daysBefore = 0,
): number[] {
  if (lengths.length === 0) return daily.map((hours) => draft.row(Number.NEGATIVE_INFINITY, hours));
  const rows = daily.map(() => draft.row(Number.NEGATIVE_INFINITY, 0));
  const used = daily.map((hours, day) => {
    const column = draft.column(0, 0, hours);
    draft.enter(column, rows[day], -1);
    return column;
  });
  for (const length of lengths)
    for (let from = -Math.min(daysBefore, length - 1); from <= Math.max(0, daily.length - length); from++) {
      const row = draft.row(Number.NEGATIVE_INFINITY, Math.max(0, limit(length, from)));
      for (const column of used.slice(Math.max(0, from), from + length)) draft.enter(column, row, 1);
    }
  return rows;
}
