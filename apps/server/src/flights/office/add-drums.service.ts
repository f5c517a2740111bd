import type { AddDrums, BookedLoadAnswer, BookedLoadQuery } from '@drumline/contract';
import { describeFlights, faultsOfAdding, standingWith } from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import type { Account } from '../../people/account.table.js';
import { BoardService } from '../board/board.service.js';
import { assignDrums } from '../offered/assign-drums.js';
import { FlightStoreService } from '../store/flight-store.service.js';
import { bookedLoad } from './booked-load.js';
import { bookedOf } from './booked-of.js';
import { breaks, type WithLoads } from './flight-acts.service.js';

/** Drums that a person puts on a flight that flies anyway. */
@Injectable()
export class AddDrumsService {
  constructor(
    private readonly board: BoardService,
    private readonly store: FlightStoreService,
  ) {}

  /** What it carries, what it could take, and what follows; nothing is changed. */
  async look(id: string, asked: BookedLoadQuery): Promise<BookedLoadAnswer> {
    return bookedLoad(await this.board.read(), id, asked);
  }

  /** Offered with the oldest fit drums; by the approval that the booked flight cites, where it carries passengers. */
  add(id: string, wanted: AddDrums, by: Account): Promise<WithLoads> {
    return this.board.change(async (board, transaction) => {
      const booked = bookedOf(board, id);
      const faults = faultsOfAdding(board.scenario, booked)(wanted);
      if (faults.length > 0) throw breaks({ id }, 'add drums', faults);
      const { place, drums } = wanted;
      const standing = standingWith(booked, { place, drums });
      const { flights } = describeFlights(board.scenario, [...board.scenario.flights, standing], 'operator');
      const planned = flights.find((flight) => flight.id === id)!;
      const before = board.flights.find((flight) => flight.id === id);
      const flight = {
        ...{ id, kind: planned.kind, date: booked.date, departs: planned.departs, aircraft: booked.aircraft },
        ...{ pilot: planned.pilot, fromPlace: standing.from, toPlace: standing.to, stops: standing.stops },
        ...{ planned, planId: null, state: 'offered' as const, needsDecision: null, heldInPlace: false },
        version: (before?.version ?? 0) + 1,
      };
      const request = { ...flight, stops: flight.stops.map((stop) => ({ ...stop, numbers: [] })) };
      const loads = assignDrums(board.scenario, [request], new Set(board.takenBy.keys())).get(id) ?? [];
      const stamp = { act: 'add drums', by, at: board.now, reason: null };
      return { flight: await this.store.write(transaction, flight, loads, stamp), loads, raised: null };
    });
  }
}
