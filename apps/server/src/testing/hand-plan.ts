import { randomUUID } from 'node:crypto';
import { type FlightPlan, planByHand } from '@drumline/planning';
import { BoardService } from '../flights/board/board.service.js';
import { accountTable } from '../people/account.table.js';
import { demoName } from '../people/first-accounts.js';
import { planRunTable } from '../plans/plan-run.table.js';
import type { TestServer } from './create-test-server.js';

/**
 * A finished run whose plan is the territory's plan made by hand (or another one that `change` makes of it), so that a
 * test of flights needs no solver. Returns its id.
 */
export const solvedRun = async (
  server: TestServer,
  change: (plan: FlightPlan) => FlightPlan = (plan) => plan,
): Promise<string> => {
  const id = randomUUID();
  const { scenario, flights } = await server.app.get(BoardService).read();
  const plan = change(planByHand(scenario, { endTarget: 'hand plan', weather: null }).plan);
  const { id: requestedBy } = await server.database
    .getRepository(accountTable)
    .findOneByOrFail({ name: demoName('operations manager') });
  await server.database.getRepository(planRunTable).insert({
    id,
    request: { endTarget: 'hand plan', seconds: 1, seed: 1, frozen: [] } as never,
    scenario: scenario as never,
    flightRevisions: Object.fromEntries(flights.map((flight) => [flight.id, flight.revision])) as never,
    requestedBy,
    requestedByName: 'Demo operations manager',
    state: 'solved',
    outcome: { status: 'solved', plan, proof: plan.proof } as never,
    finishedAt: new Date(),
  });
  return id;
};
