import type { PickListAnswer } from '@drumline/contract';
import { Injectable } from '@nestjs/common';
import { type Board, BoardService, plannedUse } from '../flights/board/board.service.js';
import { Problem } from '../http/problem.js';
import { type DrumNow, DrumsService } from '../stock/drums.service.js';
import { pickedDrum } from './picked-drum.js';
import { type ReadiedFlight, readiedFlights } from './readied-flights.js';

/** Named drums to set out for each approved flight. */
@Injectable()
export class PickListsService {
  constructor(
    private readonly board: BoardService,
    private readonly drums: DrumsService,
  ) {}

  async all(): Promise<readonly PickListAnswer[]> {
    const board = await this.board.read();
    const flights = readiedFlights(board.flights);
    const ids = new Set(flights.map(({ flight: { id } }) => id));
    const numbers = board.loads.flatMap(({ flightId, drum }) =>
      drum !== null && ids.has(flightId) ? [drum] : [],
    );
    const drums = await this.drums.named(numbers);
    return flights.map((flight) => pickList(board, flight, drums));
  }

  async one(flight: string): Promise<PickListAnswer> {
    const found = (await this.all()).find((each) => each.flight === flight);
    if (found !== undefined) return found;
    const detail = `${flight} has no pick list: it is not approved, or is loaded already. See /api/pick-lists.`;
    throw new Problem('not-found', detail);
  }
}

const pickList = (
  { scenario, loads }: Board,
  { flight, head }: ReadiedFlight,
  drums: ReadonlyMap<string, DrumNow>,
): PickListAnswer => ({
  ...head,
  stops: flight.stops.map(({ place }, stop) => {
    const own = loads.filter((load) => load.flightId === flight.id && load.stop === stop);
    const use = plannedUse(scenario, place, flight.date);
    return {
      place,
      plannedUse: use,
      drums: own
        .flatMap(({ drum }) => (drum === null ? [] : (drums.get(drum) ?? [])))
        .map((drum) => pickedDrum(drum, { from: head.from, plannedUse: use })),
      toFill: own.filter(({ drum }) => drum === null).length,
    };
  }),
});
