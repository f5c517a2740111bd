import type { Fault as FieldFault, FlightReportBody } from '@drumline/contract';
import { drumsMissing } from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import type { EntityManager } from 'typeorm';
import type { Flight, Load } from './flight.table.js';
import { FlightDrumsService } from './flight-drums.service.js';
import type { SentReport } from './flight-reports.service.js';
import { FlightStoreService } from './flight-store.service.js';
import { faultsOfLoad, type LoadBody, signedDifferences } from './look-at-load.js';
import { unlikeOwnSheet } from './told-totals.js';

export interface Looked {
  /** They keep out a report that would move its flight; of one that comes late they are raised. */
  readonly faults: readonly FieldFault[];
  readonly raised: readonly string[];
}

@Injectable()
export class LookAtReportService {
  constructor(
    private readonly store: FlightStoreService,
    private readonly drums: FlightDrumsService,
  ) {}

  async at(transaction: EntityManager, flight: Flight, { body, board, now }: SentReport): Promise<Looked> {
    const loads = await this.store.loadsOf(transaction, flight.id);
    const raised = oddTimes(flight, body, now);
    if (body.kind === 'load' && board !== null)
      return {
        faults: faultsOfLoad(board, flight, body),
        raised: [
          ...raised,
          ...signedDifferences(board, flight, body).map((words) => `${flight.id}: ${words}`),
          ...unlikeOwnSheet(board, flight, { body, before: loads }).map((words) => `${flight.id}: ${words}`),
          ...otherDrums(flight, loads, body),
        ],
      };
    if (body.kind !== 'report') return { faults: [], raised };
    const numbers = new Set(loads.flatMap(({ drum }) => drum ?? []));
    const moved = await this.drums.moved(transaction, [flight.id], numbers);
    return { faults: drumsMissing(loads, moved.get(flight.id) ?? []).map(missingFault), raised };
  }
}

const missingFault = (problem: string): FieldFault => ({
  path: 'drums',
  problem,
  remedy: 'Send its movement, then report the flight again.',
});

/** A second loading of a flight that is loaded: the drums of the first stand. */
const otherDrums = (flight: Flight, loads: readonly Load[], { drums }: LoadBody): readonly string[] => {
  if (flight.state !== 'loaded') return [];
  const aboard = loads.flatMap(({ drum }) => drum ?? []).sort();
  const said = drums.map(({ drum }) => drum).sort();
  if (aboard.join() === said.join()) return [];
  return [`${flight.id}: loaded with ${aboard.join(', ')}; a second report says ${said.join(', ')}.`];
};

/** Clocks of phones may be off by so much, and two people look at them at different moments. Common practice, no source. */
const slackMs = 10 * 60_000;

const oddTimes = ({ id, offAt, landedAt }: Flight, body: FlightReportBody, now: Date): readonly string[] => {
  const at = Date.parse(body.happenedAt);
  const when = (time: number | Date): string => `${new Date(time).toISOString().slice(0, 16)}Z`;
  const isLanding = ['land', 'turn back', 'end elsewhere'].includes(body.kind);
  const first = body.kind === 'take off' ? offAt : isLanding ? landedAt : null;
  return [
    ...(at - now.getTime() > slackMs
      ? [`${id}: "${body.kind}" is said to be at ${when(at)} and came in at ${when(now)}.`]
      : []),
    ...(first !== null && Math.abs(at - first.getTime()) > slackMs
      ? [`${id}: "${body.kind}" is reported at ${when(first)} and at ${when(at)}; the first stands.`]
      : []),
    ...(isLanding && offAt !== null && at < offAt.getTime()
      ? [`${id}: down at ${when(at)}, and off at ${when(offAt)}.`]
      : []),
  ];
};
