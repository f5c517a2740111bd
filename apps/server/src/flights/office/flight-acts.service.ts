import type { Fault } from '@drumline/planning';
import {
  type FlightAct,
  type FlightRole,
  type Need,
  nextState,
  replanFreedom,
  transitions,
} from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import type { EntityManager } from 'typeorm';
import { type Expected, etagOf } from '../../http/etag.js';
import { Problem } from '../../http/problem.js';
import type { Account } from '../../people/account.table.js';
import { type Board, BoardService } from '../board/board.service.js';
import { assignDrums } from '../offered/assign-drums.js';
import type { Flight, Load } from '../store/flight.table.js';
import { FlightStoreService } from '../store/flight-store.service.js';
import { asFieldFault, dayFaults, faultsOfApproving } from './check-flight.js';

export interface WithLoads {
  readonly flight: Flight;
  readonly loads: readonly Load[];
  /** Something to look at that the act brought up; null: nothing. */
  readonly raised: string | null;
}

export interface Wanted {
  readonly id: string;
  readonly act: FlightAct;
  readonly expected: Expected;
  readonly reason?: string;
}

/** Acts of the state machine (docs/flight-states.md) that change nothing of the flight but its state. */
@Injectable()
export class FlightActsService {
  constructor(
    private readonly board: BoardService,
    private readonly store: FlightStoreService,
  ) {}

  act(wanted: Wanted, by: Account): Promise<WithLoads> {
    return this.board.change(async (board, transaction) => {
      const flight = await this.store.one(transaction, wanted.id);
      const own = loadsOf(board, flight);
      if (isRepeat(flight, wanted, by)) return { flight, loads: own, raised: null };
      refuseStale(flight, wanted.expected);
      return this.move(board, transaction, flight, wanted, by);
    });
  }

  /** The act inside a turn that has begun: of several flights in one action, all move or none. */
  async move(
    board: Board,
    transaction: EntityManager,
    flight: Flight,
    { act, reason }: Pick<Wanted, 'act' | 'reason'>,
    by: Account,
  ): Promise<WithLoads> {
    const before = loadsOf(board, flight);
    const loads = act === 'approve' ? withDrums(board, flight, before) : before;
    const faults = faultsOfAct(board, flight, loads, act);
    if (faults.length > 0) throw breaks(flight, act, faults);
    const answer = nextState(flight, {
      act,
      by: { name: by.fullName, role: roleFor(by, flight, act) },
      met: ['checked today', ...(flight.pilot === null ? [] : (['pilot'] as const))],
      ...(reason === undefined ? {} : { reason }),
    });
    if (answer.kind === 'refused') throw new Problem('conflict', answer.words);
    const { state, version, needsDecision } = answer.flight;
    const stamp = { act, by, at: board.now, reason: reason ?? null };
    const hasLeft = state !== 'loaded' && replanFreedom(state) === 'never';
    const kept = answer.handsDrumsBack ? [] : loads.map((load) => ({ ...load, settled: hasLeft }));
    const heldInPlace = flight.heldInPlace && state === 'offered' && act !== 'let go';
    const next = { ...flight, state, version, needsDecision, heldInPlace };
    const written = await this.store.write(transaction, next, kept, stamp);
    return { flight: written, loads: kept, raised: answer.raised };
  }

  /** Offered flights that a re-plan is to leave as they are, or may move again. */
  hold(wanted: Omit<Wanted, 'act'>, heldInPlace: boolean, by: Account): Promise<WithLoads> {
    return this.board.change(async (board, transaction) => {
      const flight = await this.store.one(transaction, wanted.id);
      const loads = loadsOf(board, flight);
      if (flight.heldInPlace === heldInPlace) return { flight, loads, raised: null };
      refuseStale(flight, wanted.expected);
      if (flight.state !== 'offered')
        throw new Problem(
          'conflict',
          `${flight.id} is ${flight.state}: only offered flights are held in place.`,
        );
      const act = heldInPlace ? 'hold in place' : 'free to move';
      const stamp = { act, by, at: board.now, reason: wanted.reason ?? null };
      const written = await this.store.write(transaction, { ...flight, heldInPlace }, loads, stamp);
      return { flight: written, loads, raised: null };
    });
  }

  /** Several in one named action. */
  letGo(flights: readonly { readonly id: string; readonly revision: number }[], reason: string, by: Account) {
    return this.board.change(async (board, transaction) => {
      const moved: WithLoads[] = [];
      for (const { id, revision } of flights) {
        const flight = await this.store.one(transaction, id);
        const wanted: Wanted = { id, act: 'let go', reason, expected: { version: revision } };
        if (isRepeat(flight, wanted, by)) moved.push({ flight, loads: [], raised: null });
        else {
          refuseStale(flight, wanted.expected);
          moved.push(await this.move(board, transaction, flight, wanted, by));
        }
      }
      return moved;
    });
  }
}

export const loadsOf = ({ loads }: Board, { id }: Flight): readonly Load[] =>
  loads.filter(({ flightId }) => flightId === id);

interface Sent {
  readonly act: string;
  readonly expected: Expected;
  readonly reason?: string | undefined;
}

/**
 * Sent again by the same person because the answer got lost: answered like the first. Whoever sends more than a
 * reason compares the rest as well.
 */
export const isRepeat = (flight: Flight, { act, expected, reason }: Sent, by: Account): boolean =>
  expected !== 'none yet' &&
  flight.revision === expected.version + 1 &&
  flight.lastAct === act &&
  flight.reason === (reason ?? null) &&
  flight.changedBy === by.id;

/** Two people at once: the second is told who was first, when, and what was done. */
export const refuseStale = (flight: Flight, expected: Expected): void => {
  const { id, revision, state, lastAct, changedByName, changedAt } = flight;
  if (expected !== 'none yet' && expected.version === revision) return;
  const when = `${changedAt.toISOString().slice(0, 16)}Z`;
  throw new Problem(
    'stale-version',
    `${changedByName} was first: ${lastAct} at ${when}. ${id} is ${state} now. Read it again before you go on.`,
    [],
    { ETag: etagOf(revision) },
  );
};

export const breaks = ({ id }: Pick<Flight, 'id'>, act: string, faults: readonly Fault[]): Problem =>
  new Problem('faults', `${id}: to ${act} would break a limit, see faults. Nothing was changed.`, [
    ...faults.map(asFieldFault),
  ]);

/** The role under which the person may do it, where one of theirs may. */
export const roleFor = ({ roles }: Account, { state }: Flight, act: FlightAct): FlightRole => {
  const line = transitions.find((each) => each.act === act && each.from.includes(state));
  const isMine = (role: FlightRole): boolean => (roles as readonly string[]).includes(role);
  const able = line?.who.find(isMine) ?? everyRole.find(isMine);
  if (able !== undefined) return able;
  throw new Problem('not-allowed', `To ${act} a flight is not for ${roles.join(', ')}.`);
};

const everyRole: readonly FlightRole[] = [
  'operations manager',
  'dispatcher',
  'pilot',
  'helicopter crew',
  'storekeeper',
  'accounts',
];

/** A flight may be given although a limit is broken since it was approved: its mark says so. Never on a day that is over. */
const faultsOfAct = (
  board: Board,
  flight: Flight,
  loads: readonly Load[],
  act: FlightAct,
): readonly Fault[] => {
  if (act === 'give') return dayFaults(board.scenario, flight);
  return needsOf(flight, act).includes('checked today') ? faultsOfApproving(board, flight, loads) : [];
};

const needsOf = ({ state }: Flight, act: FlightAct): readonly Need[] =>
  transitions.find((each) => each.act === act && each.from.includes(state))?.needs ?? [];

/** A flight that was let go has handed its drums back: to approve it names drums anew. */
const withDrums = (board: Board, flight: Flight, loads: readonly Load[]): readonly Load[] => {
  if (loads.length > 0) return loads;
  const stops = flight.stops.map((stop) => ({ ...stop, numbers: [] }));
  return (
    assignDrums(board.scenario, [{ ...flight, stops }], new Set(board.takenBy.keys())).get(flight.id) ?? []
  );
};
