import { type DrumOfFlight, deliveryDifferences, type FlightState } from '@drumline/planning';
import type { Raised } from '@drumline/stock';
import { addDays, localDate } from '@drumline/units';
import { Injectable, type OnModuleInit } from '@nestjs/common';
import { DataSource, In, MoreThanOrEqual } from 'typeorm';
import { RaisedService } from '../../stock/raised/raised.service.js';
import { ClockService } from '../../territory/clock.service.js';
import { TerritoryService } from '../../territory/territory.service.js';
import { FlightDrumsService } from '../board/flight-drums.service.js';
import { type Flight, flightTable, loadTable } from '../store/flight.table.js';
import { type FlightReport, flightReportTable } from '../store/flight-report.table.js';

/** Days back for which flights are looked at; a closed one has been. */
const daysBack = 14;

const underWay: readonly FlightState[] = [
  'approved',
  'given',
  'loaded',
  'away',
  'home',
  'reported',
  'turned back',
  'ended elsewhere',
];
const over: ReadonlySet<FlightState> = new Set(['home', 'reported', 'turned back', 'ended elsewhere']);

/** What reports of flights leave to be looked at: what they say themselves, and what was left against the plan. */
@Injectable()
export class FlightRaisedService implements OnModuleInit {
  constructor(
    private readonly database: DataSource,
    private readonly clock: ClockService,
    private readonly drums: FlightDrumsService,
    private readonly raised: RaisedService,
    private readonly territory: TerritoryService,
  ) {}

  onModuleInit(): void {
    this.raised.findToo(() => this.find());
  }

  private async find(): Promise<readonly Raised[]> {
    const since = addDays(localDate((await this.clock.now()).toISOString(), 'UTC'), -daysBack);
    const { manager } = this.database;
    const flights = await manager.find(flightTable, {
      where: { date: MoreThanOrEqual(since) },
      order: { date: 'ASC', id: 'ASC' },
    });
    const open = flights.filter(({ state }) => state !== 'closed');
    const reports = await manager.find(flightReportTable, {
      where: { flightId: In(open.map(({ id }) => id)) },
      order: { receivedAt: 'ASC', id: 'ASC' },
    });
    const landed = new Set(open.flatMap(({ id, state }) => (over.has(state) ? [id] : [])));
    const flown = open.filter(({ state }) => underWay.includes(state));
    const loads = await manager.findBy(loadTable, { flightId: In(flown.map(({ id }) => id)) });
    const numbers = new Set(loads.flatMap(({ drum }) => drum ?? []));
    const moved = await this.drums.moved(
      manager,
      flown.map(({ id }) => id),
      numbers,
    );
    const places = new Set((await this.territory.everNamed()).get('places'));
    return [
      ...flown.flatMap((flight) => notAsPlanned(flight, moved.get(flight.id) ?? [])),
      ...reports.flatMap((report) => ofReport(report, landed)),
      ...reports.flatMap((report) => whereNobodyKnows(report, places)),
    ];
  }
}

/** One thing to look at for a flight, however many drums are elsewhere. */
const notAsPlanned = ({ id, state, stops }: Flight, moved: readonly DrumOfFlight[]): readonly Raised[] => {
  const what = deliveryDifferences(stops, moved, over.has(state));
  if (what.length === 0) return [];
  return [
    {
      id: `delivery not as planned | ${id}`,
      kind: 'delivery not as planned',
      drum: null,
      place: null,
      flight: id,
      movements: [],
      what: `${id}: ${what.join(' ')}`,
      whatNext: 'Look at the caches it was for, and plan again from now if one falls short.',
    },
  ];
};

const ofReport = (
  { id, flightId, kind, raised }: FlightReport,
  landed: ReadonlySet<string>,
): readonly Raised[] =>
  raised.length === 0
    ? []
    : [
        {
          id: `flight report | ${id}`,
          kind: isLoadOrProblem(kind, landed.has(flightId)) ? 'load or problem' : 'flight report',
          drum: null,
          place: null,
          flight: flightId,
          movements: [],
          what: raised.join(' '),
          whatNext: 'Ask the crew; what the flight shows is what was reported first.',
        },
      ];

/** What a crew flies with or is about to, and since when; a problem may be there for the next one too. */
const isLoadOrProblem = (kind: FlightReport['kind'], hasLanded: boolean): boolean =>
  kind === 'problem' || (!hasLanded && (kind === 'load' || kind === 'take off'));

/** It has landed somewhere: the report is kept, and the place may be set up afterwards. */
const whereNobodyKnows = (
  { id, flightId, kind, data, author }: FlightReport,
  places: ReadonlySet<string>,
): readonly Raised[] =>
  !('place' in data) || places.has(data.place)
    ? []
    : [
        {
          id: `not in the territory | ${id}`,
          kind: 'not in the territory',
          drum: null,
          place: data.place,
          flight: flightId,
          movements: [],
          what: `${flightId}: "${kind}" by ${author} names place ${data.place}, which is not in the territory.`,
          whatNext: 'Ask the crew where it is, and have the place added at Set-up if it is one.',
        },
      ];
