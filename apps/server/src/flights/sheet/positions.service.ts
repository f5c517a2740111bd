import { isDeepStrictEqual } from 'node:util';
import type { Positions } from '@drumline/contract';
import { checkLoad } from '@drumline/loading';
import { Injectable } from '@nestjs/common';
import type { Expected } from '../../http/etag.js';
import { Problem } from '../../http/problem.js';
import type { Account } from '../../people/account.table.js';
import { refuseUnlessMay } from '../../people/permission.js';
import { BoardService } from '../board/board.service.js';
import { isOwn } from '../flights.service.js';
import { isRepeat, loadsOf, refuseStale, type WithLoads } from '../office/flight-acts.service.js';
import type { Flight, Load } from '../store/flight.table.js';
import { FlightStoreService } from '../store/flight-store.service.js';
import { namedFlight } from './named-flight.js';

/** Drums put where a person wants them: kept only where weights and balance hold. */
@Injectable()
export class PositionsService {
  constructor(
    private readonly board: BoardService,
    private readonly store: FlightStoreService,
  ) {}

  set(id: string, { positions }: Positions, expected: Expected, by: Account): Promise<WithLoads> {
    return this.board.change(async (board, transaction) => {
      const before = await this.store.one(transaction, id);
      const own = isOwn(before, by);
      refuseUnlessMay(by, 'load', { to: 'enter', own, within: own ? ['as commander'] : [] });
      const loads = loadsOf(board, before);
      // No act of the state machine: nothing of the flight moves but its drums within the cabin.
      const places = new Map(positions.map(({ drum, position }) => [drum, position]));
      const next = loads.map((load) => ({ ...load, position: places.get(load.drum ?? '') ?? null }));
      if (isRepeat(before, { act, expected }, by) && isDeepStrictEqual(next, loads))
        return { flight: before, loads, raised: null };
      refuseStale(before, expected);
      refuseUnlessBeforeLoading(before);
      refuseOtherDrums(before, loads, positions);
      const named = namedFlight(board, before, next);
      if (!named.found) throw new Problem('conflict', named.why);
      const { holds, faults, mend } = checkLoad(named.load);
      if (!holds) throw notSo(before, faults, mend?.text ?? null);
      // A sheet or a phone may show it already: theirs is of another version.
      const version = before.state === 'offered' ? before.version : before.version + 1;
      const stamp = { act, by, at: board.now, reason: null };
      return {
        flight: await this.store.write(transaction, { ...before, version }, next, stamp),
        loads: next,
        raised: null,
      };
    });
  }
}

const act = 'set positions';

const refuseUnlessBeforeLoading = ({ id, state }: Flight): void => {
  if (state === 'offered' || state === 'approved' || state === 'given') return;
  throw new Problem('conflict', `${id} is ${state}: drums change places before it is loaded.`);
};

const notSo = ({ id }: Flight, faults: readonly string[], mend: string | null): Problem =>
  new Problem(
    'faults',
    `${id}: the drums may not stand so, see faults. Nothing was changed.`,
    faults.map((problem) => ({
      path: 'positions',
      problem: `${problem}.`,
      remedy: mend === null ? 'Take fewer drums, or other ones.' : `Instead: ${mend}.`,
    })),
  );

/** Every drum of the flight, each once, and no other. */
export const refuseOtherDrums = (
  { id }: Flight,
  loads: readonly Load[],
  positions: Positions['positions'],
): void => {
  const own = new Set(loads.flatMap(({ drum }) => drum ?? []));
  const named = positions.map(({ drum }) => drum);
  const faults = [
    ...named.flatMap((drum, at) =>
      !own.has(drum)
        ? [
            {
              path: `positions[${at}].drum`,
              problem: `${drum} is not on ${id}.`,
              remedy: 'Amend the flight first.',
            },
          ]
        : named.indexOf(drum) < at
          ? [
              {
                path: `positions[${at}].drum`,
                problem: `${drum} is named twice.`,
                remedy: 'Name each drum once.',
              },
            ]
          : [],
    ),
    ...[...own]
      .filter((drum) => !named.includes(drum))
      .map((drum) => ({
        path: 'positions',
        problem: `${drum} has no place.`,
        remedy: 'Give every drum of the flight its place.',
      })),
  ];
  if (faults.length > 0) throw new Problem('faults', 'See faults.', faults);
};
