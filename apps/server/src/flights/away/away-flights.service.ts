import { type AwayWord, awayWord, expectedBack, type FlightState } from '@drumline/planning';
import { type IsoInstant, instantOf, localDate, minutes } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Account } from '../../people/account.table.js';
import { ScenariosService } from '../../scenarios/scenarios.service.js';
import { isOwn, seesAll } from '../flights.service.js';
import { type Flight, flightTable } from '../store/flight.table.js';

export interface AwayFlight {
  readonly flight: string;
  readonly state: FlightState;
  readonly aircraft: string;
  readonly pilot: string | null;
  readonly fromPlace: string;
  readonly toPlace: string;
  readonly stops: Flight['stops'];
  /** As reported; null: nobody has said, and it is taken for off as planned. */
  readonly offAt: IsoInstant | null;
  readonly landedAt: IsoInstant | null;
  readonly expectedBackAt: IsoInstant;
  /** Null: the operator has not said after how long a flight is overdue. */
  readonly overdueAt: IsoInstant | null;
  readonly word: AwayWord;
}

const down: readonly FlightState[] = ['home', 'turned back', 'ended elsewhere', 'reported'];

/** Who is away, and who is back today. */
@Injectable()
export class AwayFlightsService {
  constructor(
    private readonly database: DataSource,
    private readonly scenarios: ScenariosService,
  ) {}

  /** Those longest expected first; then today's that are down. */
  async list(me: Account): Promise<readonly AwayFlight[]> {
    const scenario = await this.scenarios.current();
    const today = localDate(scenario.asOf, scenario.timeZone);
    const rows = await this.database
      .getRepository(flightTable)
      .createQueryBuilder('flight')
      .where(`flight.state = 'away' or (flight.state = any(:down) and flight.date = :today)`, { down, today })
      .getMany();
    const shown = rows.filter((flight) => seesAll(me) || isOwn(flight, me));
    return shown.map(shownIn(scenario)).sort(byNeed);
  }
}

type Territory = Awaited<ReturnType<ScenariosService['current']>>;

const shownIn =
  ({ asOf, timeZone, policy, aircraft, aircraftTypes }: Territory) =>
  (flight: Flight): AwayFlight => {
    const { id, state, date, departs, fromPlace, toPlace, pilot, stops, planned, offAt, landedAt } = flight;
    const type = aircraft.find(({ tail }) => tail === flight.aircraft)?.type;
    const expectedBackAt = expectedBack({
      offAt: offAt?.toISOString() ?? instantOf(date, departs, timeZone),
      blockHours: planned.blockHours,
      stops: Math.max(0, planned.legs.length - 1),
      turnRoundMinutes: aircraftTypes.find((each) => each.id === type)?.turnRoundMinutes ?? minutes(0),
    });
    const overdueAfterMinutes = policy.overdue?.afterMinutes ?? null;
    return {
      flight: id,
      state,
      aircraft: flight.aircraft,
      pilot,
      fromPlace,
      toPlace,
      stops,
      offAt: offAt?.toISOString() ?? null,
      landedAt: landedAt?.toISOString() ?? null,
      expectedBackAt,
      overdueAt: overdueAfterMinutes === null ? null : later(expectedBackAt, overdueAfterMinutes),
      word: awayWord({ state, expectedBackAt, overdueAfterMinutes }, asOf),
    };
  };

const later = (at: IsoInstant, minutesLater: number): IsoInstant =>
  `${new Date(Date.parse(at) + minutesLater * 60_000).toISOString().slice(0, 19)}Z`;

const byNeed = (one: AwayFlight, other: AwayFlight): number =>
  Number(one.state !== 'away') - Number(other.state !== 'away') ||
  Date.parse(one.expectedBackAt) - Date.parse(other.expectedBackAt);
