import type { MyDay, PhoneDrum, PhoneFlight, PhonePlace } from '@drumline/contract';
import { makeLoadSheet } from '@drumline/loading';
import type { FlightState, Scenario } from '@drumline/planning';
import { holdOn } from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import type { Account } from '../../people/account.table.js';
import { SameReportsService } from '../../stock/ledger/same-reports.service.js';
import { ClockService } from '../../territory/clock.service.js';
import { type Board, BoardService } from '../board/board.service.js';
import { drumsFor, namedFlight } from '../sheet/named-flight.js';
import { requestFor } from '../sheet/sheet-for.js';
import type { Flight, Load } from '../store/flight.table.js';

/** With its crew and not closed: what a phone has to know of. */
const onPhone: ReadonlySet<FlightState> = new Set([
  'given',
  'loaded',
  'away',
  'home',
  'turned back',
  'ended elsewhere',
  'reported',
]);

/** A crew's flights with everything that is needed where there is no line. */
@Injectable()
export class MyDayService {
  constructor(
    private readonly board: BoardService,
    private readonly clock: ClockService,
    private readonly same: SameReportsService,
  ) {}

  async of({ id, crew }: Account): Promise<MyDay> {
    const board = await this.board.read();
    const { scenario } = board;
    const own = board.flights.filter(
      ({ pilot, state }) => pilot !== null && pilot === crew && onPhone.has(state),
    );
    return {
      format: 'my-day/1',
      at: (await this.clock.now()).toISOString(),
      serverAt: new Date().toISOString(),
      timeZone: scenario.timeZone,
      today: scenario.firstDay,
      crew,
      places: scenario.places.map(placeOf(board.facts.scenario)),
      surfaceReports: newestByPlace(scenario),
      drums: board.facts.scenario.drums.map(drumOf(scenario)),
      brimLitres: scenario.policy.drum.brimLitres,
      sameReports: await this.same.of(id),
      flights: own.toSorted(byDeparture).map((flight) => flightOf(board, flight, drumsFor(board, flight))),
    };
  }
}

const byDeparture = (one: Flight, other: Flight): number =>
  `${one.date} ${one.departs}`.localeCompare(`${other.date} ${other.departs}`);

const placeOf =
  ({ caches, drums }: Scenario) =>
  ({
    latitudeDeg: _latitude,
    longitudeDeg: _longitude,
    ...place
  }: Scenario['places'][number]): PhonePlace => ({
    ...place,
    drums: drums.filter((drum) => drum.place === place.code).length,
    capacityDrums: caches.find((cache) => cache.place === place.code)?.capacityDrums ?? null,
  });

const newestByPlace = ({ surfaceReports }: Scenario): MyDay['surfaceReports'] => {
  const ordered = surfaceReports.toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at));
  return [...new Map(ordered.map((report) => [report.place, report])).values()];
};

const drumOf =
  ({ batches }: Scenario) =>
  (drum: Scenario['drums'][number]): PhoneDrum => {
    const { number, place, batch, grossKg: kg, tareKg, litres } = drum;
    return { number, place, batch, kg, tareKg, litres, held: holdOn(drum, batches)?.hold.reason ?? null };
  };

const flightOf = (board: Board, flight: Flight, loads: readonly Load[]): PhoneFlight => {
  const { id, state, version, needsDecision, date, departs, aircraft, lastAct, changedByName, reason } =
    flight;
  const named = namedFlight(board, flight, loads);
  const request = named.found ? requestFor(board, flight, named.load) : null;
  return {
    ...{ id, state, version, needsDecision, date, departs, aircraft, lastAct, changedByName, reason },
    changedAt: flight.changedAt.toISOString(),
    route: [flight.fromPlace, ...flight.planned.legs.map(({ to }) => to)],
    stops: flight.stops.map(({ place }, stop) =>
      stopOf(
        flight,
        place,
        loads.filter((load) => load.stop === stop),
      ),
    ),
    sheet: request === null ? null : makeLoadSheet(request),
    request,
    why: named.found ? null : named.why,
  };
};

const stopOf = ({ planned }: Flight, place: string, loads: readonly Load[]): PhoneFlight['stops'][number] => {
  const stop = planned.stops.find((each) => each.place === place);
  return {
    place,
    drums: loads.flatMap(({ drum }) => drum ?? []),
    drumsIfSoft: stop?.drumsIfSoft ?? null,
    planned:
      stop === undefined
        ? null
        : { arrivalLb: stop.unloadOrStay.printedArrivalLb, overLb: stop.unloadOrStay.printedOverLb },
  };
};
