import { describeFlights, type StandingFlight } from '@drumline/planning';
import { theProgram } from '../audit/audit.service.js';
import { BoardService } from '../flights/board/board.service.js';
import { FlightStoreService } from '../flights/store/flight-store.service.js';
import type { TestServer } from './create-test-server.js';
import { solvedRun } from './hand-plan.js';

/** Flights that stand offered without a plan having been asked whether they go together. */
export const offeredFlights = async (
  server: TestServer,
  standing: readonly Omit<StandingFlight, 'state'>[],
): Promise<void> => {
  const planId = await solvedRun(server, (plan) => ({ ...plan, flights: [] }));
  const flights = standing.map((flight) => ({ ...flight, state: 'offered' as const }));
  await server.app.get(BoardService).change(async ({ scenario, now }, transaction) => {
    for (const planned of describeFlights(scenario, flights, 'operator').flights) {
      const { id, kind, state, date, departs, aircraft, pilot, from, to, stops } = planned;
      const flight = {
        id,
        kind,
        state,
        date,
        departs,
        aircraft,
        pilot,
        fromPlace: from,
        toPlace: to,
        planned,
      };
      await server.app.get(FlightStoreService).write(
        transaction,
        {
          ...flight,
          stops: stops.map(({ place, drums }) => ({ place, drums })),
          planId,
          version: 1,
          needsDecision: null,
          heldInPlace: false,
        },
        [],
        { act: 'offer', by: theProgram, at: now, reason: null },
      );
    }
  });
};
