import { randomUUID } from 'node:crypto';
import { parseScenario } from '@drumline/contract';
import { describeFlights } from '@drumline/planning';

/** Flights as the week board shows them: those that the demo's document lists as planned by hand, so many times over. */
export const largeWeek = (document, times) => {
  const { scenario } = parseScenario(document);
  const standing = scenario.handPlan.map((flight) => ({ ...flight, state: 'offered' }));
  const { flights } = describeFlights(scenario, standing, 'operator');
  return Array.from({ length: times }, (_, copy) =>
    flights.map((planned) => ({ ...planned, id: `${planned.id}-${copy + 1}` })),
  ).flat();
};

/** Entered as if a plan of theirs had been accepted: what is measured is how they are read. */
export const enterWeek = async (database, flights, account) => {
  const plan = randomUUID();
  await database.query(
    `insert into plan_runs (id, request, scenario, flight_revisions, requested_by, requested_by_name, state, outcome, finished_at)
     values ($1, '{}', '{}', '{}', $2, 'bench', 'solved', '{}', now())`,
    [plan, account],
  );
  for (const planned of flights) {
    const { id, kind, state, date, departs, aircraft, pilot, from, to, stops } = planned;
    await database.query(
      `insert into flights (id, kind, state, version, revision, plan_id, date, departs, aircraft, pilot, from_place, to_place,
         stops, planned, last_act, changed_at, changed_by_name)
       values ($1, $2, $3, 1, 1, $4, $5, $6, $7, $8, $9, $10, $11, $12, 'offer', now(), 'bench')`,
      [
        ...[id, kind, state, plan, date, departs, aircraft, pilot, from, to],
        JSON.stringify(stops.map(({ place, drums }) => ({ place, drums }))),
        JSON.stringify(planned),
      ],
    );
  }
};
