import type { FlightsChange, TouchedByChangeAnswer } from '@drumline/contract';
import { expectedSurface, latestReports, type SurfaceReport, type SurfaceState } from '@drumline/network';
import {
  checkFlights,
  type FlightState,
  flightCard,
  markableStates,
  type Scenario,
} from '@drumline/planning';
import { addDays, epochMinutes, type IsoDate } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { Problem } from '../../http/problem.js';
import { TerritoryService } from '../../territory/territory.service.js';
import { type Board, BoardService } from '../board/board.service.js';
import { faultsOfStanding } from '../office/check-flight.js';
import { loadsOf } from '../office/flight-acts.service.js';
import type { Flight } from '../store/flight.table.js';
import { type Checked, type TouchedBooked, touchedBooked } from './touched-booked.js';

export interface TouchedFlight {
  readonly flight: string;
  readonly state: FlightState;
  readonly date: IsoDate;
  readonly aircraft: string;
  readonly route: readonly string[];
  readonly drums: number;
  /** As many as may go by the report; null: all of them. */
  readonly drumsThatGo: number | null;
  /** What it breaks that is not broken now; null: the flight stands as it is. */
  readonly breaks: string | null;
}

export interface TouchedAnswer {
  readonly place: string;
  /** What counts there today, now and with the report. */
  readonly before: SurfaceState;
  readonly after: SurfaceState;
  /** A report of a later time that is there already: it stands, and this one is kept beside it. Null: this one stands. */
  readonly outrankedBy: SurfaceReport | null;
  readonly flights: readonly TouchedFlight[];
  readonly booked: readonly TouchedBooked[];
  /** Without a last day: flights of later days that would be touched if it held till then, the first day first. */
  readonly ifItLasts: readonly { readonly flight: string; readonly date: IsoDate }[];
}

/** What a surface report, or another change of the territory, would do to flights, before it is given. */
@Injectable()
export class TouchedFlightsService {
  constructor(
    private readonly board: BoardService,
    private readonly territory: TerritoryService,
  ) {}

  /** Flights that could not be flown as they stand, and can today. */
  async byChange(change: FlightsChange): Promise<TouchedByChangeAnswer> {
    const board = await this.board.read();
    const scenario = await this.territory.changed(board.scenario, change);
    const [before, after] = [checkedOn(board), checkedOn({ ...board, scenario })];
    return {
      flights: board.flights
        .filter(({ state }) => markableStates.includes(state))
        .map((flight) => touched(flight, before, after))
        .filter(({ breaks }) => breaks !== null),
      booked: touchedBooked(before, after).filter(({ breaks }) => breaks !== null),
    };
  }

  async by(report: SurfaceReport): Promise<TouchedAnswer> {
    const before = checkedOn(await this.board.read());
    const answer = touchedBy(before, report);
    return { ...answer, ifItLasts: ifItLasts(before, report, answer) };
  }
}

const touchedBy = (before: CheckedBoard, report: SurfaceReport): Omit<TouchedAnswer, 'ifItLasts'> => {
  const { board, scenario } = before;
  const place = scenario.places.find(({ code }) => code === report.place);
  if (place === undefined)
    throw new Problem('not-found', `${report.place} is not a place of the territory. See /api/places.`);
  const after = checkedOn({ ...board, scenario: withReport(scenario, report) });
  const [countsBefore, countsAfter] = [surfaceOf(scenario), surfaceOf(after.scenario)];
  const isOther = (date: IsoDate) => countsBefore(place, date) !== countsAfter(place, date);
  const isTouched = ({ state, date, stops }: Flight): boolean =>
    markableStates.includes(state) && stops.some((stop) => stop.place === report.place) && isOther(date);
  const today = scenario.firstDay;
  return {
    place: report.place,
    before: countsBefore(place, today),
    after: countsAfter(place, today),
    outrankedBy: laterThan(report, scenario),
    flights: board.flights.filter(isTouched).map((flight) => touched(flight, before, after)),
    booked: touchedBooked(before, after).filter(
      ({ date, route }) => route.includes(report.place) && isOther(date),
    ),
  };
};

/** Days ahead for which a last day is asked for: a day can be said by its name. */
const daysAsked = 6;

/** Flights of the days that a report without a last day does not reach, that could not be flown as they stand if it held till then. */
const ifItLasts = (
  before: CheckedBoard,
  { untilDate, ...report }: SurfaceReport,
  now: Omit<TouchedAnswer, 'ifItLasts'>,
): TouchedAnswer['ifItLasts'] => {
  const isWorse = report.state === 'soft' || report.state === 'closed';
  if (untilDate !== undefined || !isWorse || now.outrankedBy !== null) return [];
  const lasting = touchedBy(before, { ...report, untilDate: addDays(before.scenario.firstDay, daysAsked) });
  const counted = new Set([...now.flights, ...now.booked].map(({ flight }) => flight));
  return [...lasting.flights, ...lasting.booked]
    .filter(({ flight, breaks }) => breaks !== null && !counted.has(flight))
    .map(({ flight, date }) => ({ flight, date }))
    .toSorted((one, other) => (one.date < other.date ? -1 : 1));
};

const laterThan = (report: SurfaceReport, { surfaceReports, asOf }: Scenario): SurfaceReport | null => {
  const latest = latestReports(surfaceReports, asOf).get(report.place);
  return latest !== undefined && epochMinutes(latest.at) > epochMinutes(report.at) ? latest : null;
};

/** By a clock a little ahead of ours it is heard all the same. */
const withReport = (scenario: Scenario, report: SurfaceReport): Scenario => ({
  ...scenario,
  asOf: epochMinutes(report.at) > epochMinutes(scenario.asOf) ? report.at : scenario.asOf,
  surfaceReports: [...scenario.surfaceReports, report],
});

const surfaceOf = (scenario: Scenario) =>
  expectedSurface(scenario.surfaceReports, scenario.asOf, {
    timeZone: scenario.timeZone,
    ...scenario.policy.flyingDay,
  });

interface CheckedBoard extends Checked {
  readonly board: Board;
}

const checkedOn = (board: Board): CheckedBoard => {
  const { scenario } = board;
  return { board, scenario, faults: checkFlights(scenario, scenario.flights) };
};

const brokenOn = ({ board, faults }: CheckedBoard, flight: Flight): readonly string[] =>
  faultsOfStanding(board, faults, flight, loadsOf(board, flight)).map(({ what, mend }) => `${what} ${mend}`);

const touched = (flight: Flight, before: CheckedBoard, after: CheckedBoard): TouchedFlight => {
  const known = new Set(brokenOn(before, flight));
  const breaks = brokenOn(after, flight).find((what) => !known.has(what)) ?? null;
  const fewer = breaks === null ? null : (flightCard(after.scenario, flight.id)?.fewer ?? null);
  return {
    flight: flight.id,
    state: flight.state,
    date: flight.date,
    aircraft: flight.aircraft,
    route: [flight.fromPlace, ...flight.stops.map(({ place }) => place), flight.toPlace],
    drums: flight.stops.reduce((sum, { drums }) => sum + drums, 0),
    drumsThatGo: fewer === null ? null : fewer.stops.reduce((sum, { drums }) => sum + drums, 0),
    breaks,
  };
};
