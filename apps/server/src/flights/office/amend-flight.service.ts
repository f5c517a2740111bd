import { isDeepStrictEqual } from 'node:util';
import type { Amendment } from '@drumline/contract';
import { describeFlights, type Fault, nextState } from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { type Expected } from '../../http/etag.js';
import { Problem } from '../../http/problem.js';
import type { Account } from '../../people/account.table.js';
import { refuseUnlessMay } from '../../people/permission.js';
import { asStanding, type Board, BoardService } from '../board/board.service.js';
import { assignDrums } from '../offered/assign-drums.js';
import { keepStanding } from '../sheet/keep-standing.js';
import type { Flight, Load } from '../store/flight.table.js';
import { FlightStoreService } from '../store/flight-store.service.js';
import { drumFaults, faultsOfAmending } from './check-flight.js';
import { breaks, isRepeat, loadsOf, refuseStale, roleFor, type WithLoads } from './flight-acts.service.js';

interface Amended {
  readonly flight: Flight;
  readonly loads: readonly Load[];
  readonly faults: readonly Fault[];
}

interface Checked {
  readonly faults: readonly Fault[];
  /** Off time of the amended flight; where it breaks something, the first that breaks nothing; null: there is none. */
  readonly departs: Flight['departs'] | null;
}

/** Changes of drums, stops, aircraft, pilot or day, each checked against the limits at once. */
@Injectable()
export class AmendFlightService {
  constructor(
    private readonly database: DataSource,
    private readonly board: BoardService,
    private readonly store: FlightStoreService,
  ) {}

  /** What the amendment would break, when the flight would go off, and when it could; nothing is changed. */
  async check(id: string, amendment: Amendment): Promise<Checked> {
    const flight = await this.store.one(this.database.manager, id);
    const board = await this.board.read();
    refuseUnknown(board, amendment);
    const { faults } = amended(board, flight, amendment);
    const free = faults.length === 0 ? amendment : { ...amendment, departs: null };
    return { faults, departs: departsWith(board, flight, free) };
  }

  amend(id: string, amendment: Amendment, expected: Expected, by: Account): Promise<WithLoads> {
    return this.board.change(async (board, transaction) => {
      const before = await this.store.one(transaction, id);
      const own = loadsOf(board, before);
      const { reason } = amendment;
      if (isRepeat(before, { act: 'amend', expected, reason }, by) && isAsAmended(before, own, amendment))
        return { flight: before, loads: own, raised: null };
      refuseStale(before, expected);
      if (amendment.pilot !== undefined && amendment.pilot !== before.pilot)
        refuseUnlessMay(by, 'assign crew', { to: 'decide' });
      refuseUnknown(board, amendment);
      const answer = nextState(before, {
        act: 'amend',
        by: { name: by.fullName, role: roleFor(by, before, 'amend') },
        met: ['checked today'],
      });
      if (answer.kind === 'refused') throw new Problem('conflict', answer.words);
      const { flight, loads, faults } = amended(board, before, amendment);
      if (faults.length > 0) throw breaks(before, 'amend', faults);
      const { state, version, needsDecision } = answer.flight;
      const next = described(board, { ...flight, state, version, needsDecision }, amendment);
      const stamp = { act: 'amend', by, at: board.now, reason: reason ?? null };
      return { flight: await this.store.write(transaction, next, loads, stamp), loads, raised: null };
    });
  }
}

const amended = (board: Board, before: Flight, amendment: Amendment): Amended => {
  const { date, aircraft, departs, pilot } = amendment;
  const flight: Flight = {
    ...before,
    date: date ?? before.date,
    aircraft: aircraft ?? before.aircraft,
    departs: departs ?? before.departs,
    pilot: pilot === undefined ? before.pilot : pilot,
    stops: amendment.stops?.map(({ place, drums }) => ({ place, drums })) ?? before.stops,
  };
  const loads = amendedLoads(board, before, flight, amendment);
  const asked = departs === null ? { ...flight, departs } : flight;
  return { flight, loads, faults: faultsOfAmending(board, asked, loads) };
};

const departsWith = (board: Board, before: Flight, amendment: Amendment): Flight['departs'] | null => {
  const { flight, faults } = amended(board, before, amendment);
  return faults.length > 0 ? null : described(board, flight, amendment).departs;
};

/** Whether the flight is already what the amendment makes of it. */
const isAsAmended = (flight: Flight, loads: readonly Load[], amendment: Amendment): boolean => {
  const { date, aircraft, departs, pilot, stops } = amendment;
  const asked = {
    date,
    aircraft,
    departs,
    pilot,
    stops: stops?.map(({ place, drums }) => ({ place, drums })),
  };
  const isThere = (index: number, drum: string): boolean =>
    loads.some((load) => load.stop === index && load.drum === drum);
  return (
    isDeepStrictEqual({ ...flight, ...withoutUnsaid(asked) }, { ...flight }) &&
    (stops ?? []).every(({ numbers }, index) => (numbers ?? []).every((drum) => isThere(index, drum)))
  );
};

const withoutUnsaid = (asked: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined));

/** Named drums stay where the amendment names none and they are still fit; the oldest fit ones fill the gaps. */
const amendedLoads = (
  board: Board,
  before: Flight,
  flight: Flight,
  { stops }: Amendment,
): readonly Load[] => {
  const own = loadsOf(board, before);
  const fit = own.filter((load) => load.drum !== null && drumFaults(board, flight, [load]).length === 0);
  const keptAt = (place: string): string[] =>
    fit.flatMap((load) => (load.place === place ? (load.drum ?? []) : []));
  const request = {
    ...flight,
    stops: flight.stops.map((stop, index) => ({
      ...stop,
      numbers: stops?.[index]?.numbers ?? keptAt(stop.place).slice(0, stop.drums),
    })),
  };
  const others = [...board.takenBy].filter(([, flightId]) => flightId !== before.id);
  const taken = new Set(others.map(([drum]) => drum));
  const loads = assignDrums(board.scenario, [request], taken).get(flight.id) ?? [];
  return keepStanding(board, { before, own, flight, loads });
};

/** Legs, limits, reason and cost of the amended flight among the others. */
const described = (board: Board, flight: Flight, { departs }: Amendment): Flight => {
  const { scenario } = board;
  const others = scenario.flights.filter(({ id }) => id !== flight.id);
  const one = asStanding(departs === null ? { ...flight, departs } : flight);
  if (one === null) throw new Error(`${flight.id} is ${flight.state} and was amended`);
  const planned = describeFlights(scenario, [...others, one], 'operator').flights.find(
    ({ id }) => id === flight.id,
  );
  if (planned === undefined) throw new Error(`${flight.id} is outside the days of the territory`);
  return { ...flight, planned, departs: planned.departs };
};

const refuseUnknown = ({ scenario }: Board, { aircraft, pilot, stops }: Amendment): void => {
  const unknown = (path: string, what: string, list: string) => ({
    path,
    problem: `${what} is not in the territory.`,
    remedy: `Name one of /api/${list}.`,
  });
  const faults = [
    ...(aircraft === undefined || scenario.aircraft.some(({ tail }) => tail === aircraft)
      ? []
      : [unknown('aircraft', aircraft, 'aircraft')]),
    ...(pilot === undefined || pilot === null || scenario.pilots.some(({ id }) => id === pilot)
      ? []
      : [unknown('pilot', pilot, 'pilots')]),
    ...(stops ?? []).flatMap(({ place }, index) =>
      scenario.caches.some((cache) => cache.place === place)
        ? []
        : [unknown(`stops[${index}].place`, place, 'caches')],
    ),
    ...doubled(stops ?? []),
  ];
  if (faults.length > 0) throw new Problem('faults', 'See faults.', faults);
};

const doubled = (stops: NonNullable<Amendment['stops']>) => {
  const numbers = stops.flatMap((stop, index) => (stop.numbers ?? []).map((drum) => ({ drum, index, stop })));
  const twice = numbers.filter(({ drum }, at) => numbers.findIndex((other) => other.drum === drum) < at);
  const tooMany = stops.flatMap(({ numbers: named, drums }, index) =>
    (named?.length ?? 0) > drums
      ? [
          {
            path: `stops[${index}].numbers`,
            problem: `${named?.length} drums are named for ${drums}.`,
            remedy: 'Name as many drums as are unloaded, or fewer.',
          },
        ]
      : [],
  );
  return [
    ...twice.map(({ drum, index }) => ({
      path: `stops[${index}].numbers`,
      problem: `drum ${drum} is named twice.`,
      remedy: 'Name each drum once.',
    })),
    ...tooMany,
  ];
};
