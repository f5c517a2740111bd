import type { BookedRoute, Crew } from '@drumline/routing';
import { addDays } from '@drumline/units';
import type { Scenario } from '../scenario.js';
import { recencyDays, whyNotFit } from './crew-fit.js';
import { wholeDayWindow } from './flying-window.js';
import type { Territory } from './territory.js';

/** Who may fly what: each group is a set of pilots by day, found once for all routes that ask the same of a pilot. */
export interface CrewGroups {
  /** Index of the group for a flight; -1 where the scenario has no pilots and nobody is needed. */
  readonly of: (type: string, places: readonly string[]) => number;
  /** Index of the group that is this one pilot, fit by fact. */
  readonly named: (pilot: string) => number;
  readonly anybodyOn: (group: number, day: number) => boolean;
  /**
   * Pilots with their hours, serving every group asked for so far. Hours that frozen flights ask of the pilot they name
   * are facts: where they exceed a limit, the limit gives way, and nothing more is left of it. `hoursOn`: what a day has
   * for one person.
   */
  readonly crews: (frozen: readonly BookedRoute[], hoursOn: (day: number) => number) => readonly Crew[];
}

/** `table[day][pilot]`: fit. */
type Table = readonly (readonly boolean[])[];

export function crewGroups(scenario: Scenario, territory: Territory): CrewGroups {
  const { pilots } = scenario;
  const groups: Table[] = [];
  const byTable = new Map<string, number>();
  const byNeed = new Map<string, number>();
  const byPlace = new Map<string, Table>();
  const flyingDays = flyingDayHours(scenario, territory);

  const groupOf = (table: Table): number => {
    const text = table.map((fits) => fits.map(Number).join('')).join();
    const group = byTable.get(text) ?? groups.push(table) - 1;
    byTable.set(text, group);
    return group;
  };
  /** A flight's pilots are fit at each of its places, so that a table a place is all that must be worked out. */
  const fitAt = (type: string, code: string): Table => {
    const key = `${type} ${code}`;
    const table = byPlace.get(key) ?? fitTable(scenario, territory, type, code);
    byPlace.set(key, table);
    return table;
  };

  return {
    of: (type, places) => {
      if (pilots.length === 0) return -1;
      const need = `${type} ${needOf(scenario, territory, places)}`;
      const group = byNeed.get(need) ?? groupOf(places.map((code) => fitAt(type, code)).reduce(both));
      byNeed.set(need, group);
      return group;
    },
    named: (id) => groupOf(territory.dates.map(() => pilots.map((pilot) => pilot.id === id))),
    anybodyOn: (group, day) => group < 0 || groups[group]![day]!.some(Boolean),
    crews: (frozen, hoursOn) => {
      const dayHours = flyingDays.map((hours, day) => Math.min(hours, hoursOn(day)));
      return pilots.map((_, pilot) => crewOf(scenario, pilot, groups, frozen, dayHours));
    },
  };
}

function fitTable({ pilots, policy }: Scenario, territory: Territory, type: string, code: string): Table {
  const place = [territory.place(code)];
  return territory.dates.map((date) =>
    pilots.map((pilot) => whyNotFit(pilot, type, place, date, policy.crew) === null),
  );
}

const both = (one: Table, other: Table): Table =>
  one.map((fits, day) => fits.map((fit, pilot) => fit && other[day]![pilot]!));

/** What a flight asks of its pilot: the classes of its strips, and the strips that want a recent landing. */
function needOf({ policy }: Scenario, territory: Territory, places: readonly string[]): string {
  const needs = places.map((code) => {
    const place = territory.place(code);
    return recencyDays(place, policy.crew) === null ? `class ${place.stripClass}` : code;
  });
  return [...new Set(needs)].sort().join();
}

function crewOf(
  scenario: Scenario,
  index: number,
  groups: readonly Table[],
  frozen: readonly BookedRoute[],
  dayHours: readonly number[],
): Crew {
  const { flightHoursPerDay, dutyHoursPerDay, flightHoursPer7Days } = scenario.policy.crew;
  const days = [...Array(scenario.days).keys()];
  const own = frozen.filter(
    ({ crewGroup, day }) => crewGroup >= 0 && isOnly(groups[crewGroup]![day]!, index),
  );
  const ownOn = (day: number) => own.filter((route) => route.day === day);
  const block = days.map((day) => ownOn(day).reduce((sum, { blockHours }) => sum + blockHours, 0));
  const duty = days.map((day) => ownOn(day).reduce((sum, { dutyHours }) => sum + dutyHours, 0));
  const before = flownBefore(scenario, index);
  return {
    id: scenario.pilots[index]!.id,
    groupsByDay: days.map((day) => groups.flatMap((table, group) => (table[day]![index] ? [group] : []))),
    blockHours: block.map((hours) => Math.max(flightHoursPerDay, hours)),
    dutyHours: duty.map((hours, day) => Math.max(Math.min(dutyHoursPerDay, dayHours[day]!), hours)),
    rolling: {
      days: rollingDays,
      blockHours: Math.max(flightHoursPer7Days, mostInRun([...before, ...block])),
      flownBefore: before,
    },
  };
}

/** Hours from the first departure to the last landing at whichever base has light longest: nobody flies two at once. */
function flyingDayHours(scenario: Scenario, territory: Territory): readonly number[] {
  const homes = [...new Set(scenario.aircraft.map(({ home }) => home))].map(territory.place);
  return territory.dates.map((date) => {
    const windows = homes.map((home) => wholeDayWindow(scenario, home, date));
    return Math.max(0, ...windows.map((window) => (window === null ? 0 : (window.until - window.from) / 60)));
  });
}

const isOnly = (fits: readonly boolean[], index: number): boolean =>
  fits.every((fit, pilot) => fit === (pilot === index));

const rollingDays = 7;

function mostInRun(hours: readonly number[]): number {
  const runs = hours.map((_, first) =>
    hours.slice(first, first + rollingDays).reduce((sum, each) => sum + each, 0),
  );
  return Math.max(...runs);
}

/** Block hours on each of the days before the first that share a run of seven with it, the earliest first. */
function flownBefore({ firstDay, pilots }: Scenario, index: number): number[] {
  const { flown } = pilots[index]!;
  return [...Array(rollingDays - 1).keys()].map((i) => {
    const date = addDays(firstDay, i - (rollingDays - 1));
    return flown.filter((each) => each.date === date).reduce((sum, { blockHours }) => sum + blockHours, 0);
  });
}
