import type { CardAnswer } from '@drumline/contract';
import { printedLbOf } from '@drumline/loading';
import { checkFlights, flightCard, isUnheardOf } from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import type { Account } from '../../people/account.table.js';
import { type Board, BoardService } from '../board/board.service.js';
import { FlightsService } from '../flights.service.js';
import type { Flight, Load } from '../store/flight.table.js';
import { asFieldFault, dayFaults, faultsOfApproving, faultsOfStanding } from './check-flight.js';
import { consequenceOf } from './consequence.js';

/** All that one flight is decided by, in one read. */
@Injectable()
export class FlightCardService {
  constructor(
    private readonly flights: FlightsService,
    private readonly board: BoardService,
  ) {}

  async read(id: string, me: Account): Promise<CardAnswer> {
    const { flight, loads } = await this.flights.get(id, me);
    const board = await this.board.read();
    const { scenario } = board;
    const today = flightCard(scenario, id);
    return {
      id,
      revision: flight.revision,
      asOf: scenario.asOf,
      planned: flight.planned,
      reason: flight.reason,
      drumNumbers: loads.map(({ place, drum }) => ({ place, drum })),
      weighed: weighed(board, loads),
      today,
      faults: faultsToday(board, flight, loads).map(asFieldFault),
      ifDeclined: today === null ? null : consequenceOf(scenario, id),
    };
  }
}

/** An offered flight is judged as its approval would be: beside those that are settled. */
const faultsToday = (board: Board, flight: Flight, loads: readonly Load[]) => {
  if (isUnheardOf(flight, board.scenario.firstDay)) return dayFaults(board.scenario, flight);
  if (flight.state === 'offered') return faultsOfApproving(board, flight, loads);
  if (flight.state !== 'approved' && flight.state !== 'given') return [];
  return faultsOfStanding(board, checkFlights(board.scenario, board.scenario.flights), flight, loads);
};

const weighed = ({ scenario }: Board, loads: readonly Load[]): CardAnswer['weighed'] => {
  const weights = new Map(scenario.drums.map(({ number, grossKg }) => [number, grossKg]));
  const drums = loads.flatMap(({ drum, stop }) => {
    const kg = weights.get(drum ?? '');
    return kg === undefined ? [] : [{ stop, kg, lb: printedLbOf(kg) }];
  });
  if (loads.length === 0 || drums.length < loads.length) return null;
  const lbFrom = (leg: number) => drums.reduce((sum, { stop, lb }) => (stop < leg ? sum : sum + lb), 0);
  const legs = Math.max(...drums.map(({ stop }) => stop)) + 1;
  return {
    kg: drums.reduce((sum, { kg }) => sum + kg, 0),
    lbOnLegs: Array.from({ length: legs }, (_, leg) => lbFrom(leg)),
  };
};
