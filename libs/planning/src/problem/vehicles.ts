import type { Vehicle } from '@drumline/routing';
import { dayIndex } from '@drumline/units';
import type { Aircraft, FlightState, Scenario } from '../scenario.js';
import type { AwayHours } from './away-hours.js';
import { flyingWindow, wholeDayWindow } from './flying-window.js';
import type { FrozenEntry } from './problem-map.js';
import type { Territory } from './territory.js';

export interface FleetDays {
  readonly scenario: Scenario;
  readonly territory: Territory;
  readonly storeOf: ReadonlyMap<string, number>;
  readonly frozen: readonly FrozenEntry[];
  /** What the light at the strips leaves. */
  readonly awayHours: AwayHours;
}

/** The aircraft with the hours that each day leaves them for new flights. */
export function vehiclesOf({
  scenario,
  territory,
  storeOf,
  frozen,
  awayHours,
}: FleetDays): readonly Vehicle[] {
  return scenario.aircraft.map((aircraft) => {
    const { type, home } = aircraft;
    const held = heldHours(scenario, aircraft, frozen);
    const hours = territory.dates.map((date, day) =>
      isAbsent(aircraft, date)
        ? 0
        : Math.min(
            freeHours(scenario, territory, aircraft, day, held[day]!),
            awayHours.ofAircraft(type, home, day),
          ),
    );
    return {
      id: aircraft.tail,
      kind: aircraft.type,
      home: storeOf.get(aircraft.home)!,
      blockHours: hours,
      dutyHours: hours,
      rolling: null,
    };
  });
}

export function isAbsent({ absences }: Aircraft, date: string): boolean {
  return absences.some(({ from, until }) => from <= date && date <= until);
}

/** Hours taken by flights that fly anyway, turn-rounds included: all of a day, and those not yet home at `asOf`. */
interface Held {
  readonly all: number;
  readonly ahead: number;
}

/** What is left of the whole day, and no more than what is left of it from now on. */
function freeHours(
  scenario: Scenario,
  territory: Territory,
  aircraft: Aircraft,
  day: number,
  held: Held,
): number {
  const home = territory.place(aircraft.home);
  const date = territory.dates[day]!;
  const window = flyingWindow(scenario, home, date);
  const whole = wholeDayWindow(scenario, home, date);
  if (window === null || whole === null) return 0;
  const ofDay = (whole.until - whole.from) / 60 - held.all;
  const fromNow = (window.until - window.from) / 60 - held.ahead;
  return Math.max(0, Math.min(ofDay, fromNow));
}

const flown: readonly FlightState[] = ['home', 'reported', 'closed'];

function heldHours(
  { bookedFlights, firstDay, days }: Scenario,
  { tail }: Aircraft,
  frozen: readonly FrozenEntry[],
): readonly Held[] {
  const held = Array.from({ length: days }, () => ({ all: 0, ahead: 0 }));
  for (const { aircraft, date, heldHours } of bookedFlights) {
    const day = held[dayIndex(firstDay, date)];
    if (aircraft !== tail || day === undefined) continue;
    day.all += heldHours;
    day.ahead += heldHours;
  }
  const booked = new Set(bookedFlights.map(({ id }) => id));
  for (const { flight, day, onDay } of frozen) {
    if (flight.aircraft !== tail || booked.has(flight.id)) continue;
    held[day]!.all += onDay.load.dutyHours;
    if (!flown.includes(flight.state)) held[day]!.ahead += onDay.load.dutyHours;
  }
  return held;
}
