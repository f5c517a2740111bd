import type { FillListAnswer } from '@drumline/contract';
import { addDays } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { type Board, BoardService, plannedUse } from '../flights/board/board.service.js';
import { fillList } from './fill-list.js';
import { type ReadiedFlight, readiedFlights } from './readied-flights.js';

/** Drums to fill for the approved flights, base by base. */
@Injectable()
export class FillListsService {
  constructor(private readonly board: BoardService) {}

  async all(): Promise<readonly FillListAnswer[]> {
    return fillListsOf(await this.board.read());
  }
}

/** Base by base, as the flights of this board want it. */
export const fillListsOf = (board: Board): readonly FillListAnswer[] => {
  const { bases, policy, firstDay } = board.scenario;
  const { batches } = board.facts.scenario;
  const lines = readiedFlights(board.flights).flatMap((flight) => linesOf(board, flight));
  return bases.map((base) =>
    fillList({
      base,
      lines: lines.filter(({ from }) => from === base.place),
      batches,
      fillLitres: policy.drum.fillLitres,
      today: firstDay,
    }),
  );
};

const linesOf = ({ scenario, loads }: Board, { flight, head }: ReadiedFlight): FillListAnswer['lines'] =>
  flight.stops.flatMap(({ place }, stop) => {
    const drums = loads.filter(
      (load) => load.flightId === flight.id && load.stop === stop && load.drum === null,
    ).length;
    if (drums === 0) return [];
    const use = plannedUse(scenario, place, flight.date);
    return [{ ...head, to: place, drums, fillBy: addDays(flight.date, -1), plannedUse: use }];
  });
