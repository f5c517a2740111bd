import type { StandingPlan, WeekAnswer } from '@drumline/contract';
import {
  type BookedFlight,
  bookedFaults,
  bookedSpares,
  faultWords,
  heardSince,
  isUnheardOf,
  legsToday,
  planTotals,
  standingState,
  weekTally,
} from '@drumline/planning';
import { addDays, daysFrom, type IsoDate } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { type Board, BoardService } from '../flights/board/board.service.js';
import type { Flight } from '../flights/store/flight.table.js';
import { FlightStoreService } from '../flights/store/flight-store.service.js';
import {
  ideasAhead,
  type KnownPlan,
  StandingPlanService,
  standAsAccepted,
} from '../plans/standing-plan.service.js';
import { TerritoryService } from '../territory/territory.service.js';
import type { WeekQuery } from './week.controller.js';
import { landingsOf, referencesOf, weekBooked, weekFlight } from './week-rows.js';

/** The week board in one read. */
@Injectable()
export class WeekService {
  constructor(
    private readonly database: DataSource,
    private readonly board: BoardService,
    private readonly store: FlightStoreService,
    private readonly territory: TerritoryService,
    private readonly plans: StandingPlanService,
  ) {}

  async read({ from, days }: WeekQuery): Promise<Omit<WeekAnswer, 'stockIsBehind'>> {
    const board = await this.board.read();
    const { scenario } = board;
    const first = from ?? mondayOf(scenario.firstDay);
    const dates = daysFrom(first, days);
    const flights = await this.store.since(this.database.manager, first);
    const legs = legsToday(scenario, idsOf(flights.filter(isToDecide)));
    const standing = flights.filter(mayStand(scenario)).filter(({ state }) => standingState(state) !== null);
    const isShown = ({ date }: { readonly date: IsoDate }) => date <= dates.at(-1)!;
    const plan = await this.plans.read();
    const sincePlan = plan === null ? [] : await this.store.since(this.database.manager, plan.firstDay);
    const totals = planTotals(standing.map(({ planned }) => planned));
    return {
      asOf: scenario.asOf,
      today: scenario.firstDay,
      days: dates.map((date) => ({ date, noFlying: scenario.noFlyingDays.includes(date) })),
      aircraft: scenario.aircraft,
      caches: scenario.caches.map(({ place }) => place),
      flights: flights
        .filter(isShown)
        .map((flight) => weekFlight(flight, scenario.firstDay, legs.get(flight.id))),
      booked: await this.booked(board, dates, idsOf(standing)),
      landings: landingsOf(standing.filter(isShown), scenario.places),
      cost: totals.cost,
      flightsCosted: standing.length,
      tally: weekTally(scenario),
      stripLimitsFrom: referencesOf(scenario.stripLimits),
      lastDay: addDays(scenario.firstDay, scenario.offeredDays - 1),
      ...planAndSince(board, plan, sincePlan),
    };
  }

  /** With those of days that are over; a booked flight that carries drums stands among the flights. */
  private async booked({ scenario }: Board, dates: readonly IsoDate[], carrying: ReadonlySet<string>) {
    const spares = new Map(bookedSpares(scenario).map(({ id, drums }) => [id, drums]));
    const faults = bookedFaults(scenario);
    const kept = (await this.territory.all('booked-flights')).map(({ data }) => data as BookedFlight);
    return kept
      .filter(({ id, date }) => dates.includes(date) && !carrying.has(id))
      .map((flight) => {
        const fault = faults.get(flight.id);
        const needsDecision = fault === undefined ? null : faultWords(fault);
        return weekBooked(flight, { spareDrums: spares.get(flight.id) ?? null, needsDecision });
      });
  }
}

const planAndSince = ({ scenario }: Board, known: KnownPlan | null, since: readonly Flight[]) => {
  if (known === null) return { plan: null, heardSince: [] };
  const { id, number, asOf, acceptedByName, cost, moneyGap, surfaceReports } = known;
  const heard = heardSince(scenario, surfaceReports);
  const isMarked = since.some(isToDecide);
  const plan: StandingPlan = {
    ...{ id, number, asOf, acceptedByName, cost, moneyGap },
    flights: known.flights.filter(({ drums }) => drums > 0).length,
    laterIdeas: ideasAhead(known, scenario.firstDay),
    isAsAccepted: heard.length === 0 && !isMarked && standAsAccepted(known, since.filter(mayStand(scenario))),
  };
  return { plan, heardSince: heard };
};

/** Of a day that is over only what was reported off counts. */
const mayStand =
  ({ firstDay }: Board['scenario']) =>
  (flight: Flight): boolean =>
    !isUnheardOf(flight, firstDay);

const isToDecide = ({ needsDecision }: Pick<Flight, 'needsDecision'>): boolean => needsDecision !== null;

const idsOf = (flights: readonly Pick<Flight, 'id'>[]): ReadonlySet<string> =>
  new Set(flights.map(({ id }) => id));

const mondayOf = (day: IsoDate): IsoDate =>
  addDays(day, -((new Date(`${day}T00:00:00Z`).getUTCDay() + 6) % 7));
