import type { Fault as FieldFault, FlightReportBody } from '@drumline/contract';
import { unlikeOwnSheet, whyDoesNotHold } from '@drumline/loading';
import { drumsMissing } from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import type { EntityManager } from 'typeorm';
import { FlightDrumsService } from '../board/flight-drums.service.js';
import { ownSheet, toldSheet } from '../sheet/own-sheet.js';
import type { Flight, Load } from '../store/flight.table.js';
import { FlightStoreService } from '../store/flight-store.service.js';
import type { SentReport } from './flight-reports.service.js';
import type { LoadBody } from './loads-aboard.js';
import { faultsOfLoad, signedDifferences } from './look-at-load.js';

export interface Looked {
  /** Of a loading, the flight as it stood then: what base marked afterwards does not unload it. */
  readonly asItStood: Flight;
  /** The ledger has drums of it off already: its loading is over, whatever has been reported of it. */
  readonly isFlown: boolean;
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
    if (body.kind !== 'load' && body.kind !== 'report')
      return { asItStood: flight, isFlown: false, faults: [], raised };
    const numbers = new Set(loads.flatMap(({ drum }) => drum ?? []));
    const moved = (await this.drums.moved(transaction, [flight.id], numbers)).get(flight.id) ?? [];
    const isFlown = moved.some(({ off }) => off !== null);
    if (body.kind === 'load' && board !== null) {
      const needsDecision = await this.store.neededDecision(transaction, flight, new Date(body.happenedAt));
      const own = ownSheet(board, flight, { body, before: loads });
      const told = toldSheet(body);
      return {
        asItStood: { ...flight, needsDecision },
        isFlown,
        faults: [...faultsOfLoad(board, flight, { body, own }), ...notHeld(whyDoesNotHold(own, told))],
        raised: [
          ...raised,
          ...markedSince(flight, needsDecision, body),
          ...signedDifferences({ body, own }).map((words) => `${flight.id}: ${words}`),
          ...unlikeOwnSheet(own, told).map((words) => `${flight.id}: ${words}`),
          ...otherDrums(flight, loads, body),
        ],
      };
    }
    return { asItStood: flight, isFlown, faults: drumsMissing(loads, moved).map(missingFault), raised };
  }
}

const missingFault = (problem: string): FieldFault => ({
  path: 'drums',
  problem,
  remedy: 'Send its movement, then report the flight again.',
});

const notHeld = (problem: string | null): readonly FieldFault[] => {
  const remedy = 'Put the drums elsewhere, or take others or fewer; then report it again.';
  return problem === null ? [] : [{ path: 'drums', problem, remedy }];
};

/** What base asked after the loading, which could not know it: the flight is loaded, and somebody has to look. */
const markedSince = (
  { id, needsDecision }: Flight,
  neededThen: string | null,
  { happenedAt }: LoadBody,
): readonly string[] =>
  needsDecision === null || neededThen !== null
    ? []
    : [`${id}: loaded at ${minuteOf(happenedAt)}, before base knew: ${needsDecision}`];

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

const minuteOf = (time: number | string | Date): string => `${new Date(time).toISOString().slice(0, 16)}Z`;

const oddTimes = ({ id, offAt, landedAt }: Flight, body: FlightReportBody, now: Date): readonly string[] => {
  const at = Date.parse(body.happenedAt);
  const isLanding = ['land', 'turn back', 'end elsewhere'].includes(body.kind);
  const first = body.kind === 'take off' ? offAt : isLanding ? landedAt : null;
  return [
    ...(at - now.getTime() > slackMs
      ? [`${id}: "${body.kind}" is said to be at ${minuteOf(at)} and came in at ${minuteOf(now)}.`]
      : []),
    ...(first !== null && Math.abs(at - first.getTime()) > slackMs
      ? [`${id}: "${body.kind}" is reported at ${minuteOf(first)} and at ${minuteOf(at)}; the first stands.`]
      : []),
    ...(isLanding && offAt !== null && at < offAt.getTime()
      ? [`${id}: down at ${minuteOf(at)}, and off at ${minuteOf(offAt)}.`]
      : []),
  ];
};
