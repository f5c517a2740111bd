import { randomUUID } from 'node:crypto';
import type { ReportAnswer } from '../flights/reports/flight-reports.service.js';
import type { Flight, Load } from '../flights/store/flight.table.js';
import { PeopleService } from '../people/people.service.js';
import { personSchema } from '../people/person.schema.js';
import type { PlanAcceptance } from '../plans/plan-run.table.js';
import type { Answer, Client } from './client.js';
import { createTestServer, type TestServer, testPassword } from './create-test-server.js';
import { solvedRun } from './hand-plan.js';

export type ShownFlight = Flight & { readonly loads: readonly Pick<Load, 'stop' | 'place' | 'drum'>[] };

export interface Refusal {
  readonly detail: string;
  readonly faults: readonly { readonly path: string; readonly problem: string }[];
}

export interface FlightDesk {
  readonly server: TestServer;
  readonly manager: Client;
  readonly dispatcher: Client;
  /** The accepted plan: the demo's plan made by hand, flights F01 to F14 of the first week. */
  readonly planId: string;
  readonly flight: (id: string) => Promise<ShownFlight>;
  /** Posts an act from the revision as it is now. */
  readonly act: (
    who: Client,
    id: string,
    path: string,
    body?: object,
  ) => Promise<Answer<ShownFlight & Refusal>>;
  /** A report of a flight by radio, one minute after the demo begins; `rest` says otherwise. */
  readonly report: (
    who: Client,
    flight: string,
    kind: string,
    rest?: object,
  ) => Promise<Answer<ReportAnswer & Refusal>>;
  /** Approves a flight and gives it to its pilot. */
  readonly give: (id: string) => Promise<ShownFlight>;
  /** The pilot of a flight, signed in. */
  readonly crewOf: (id: string) => Promise<Client>;
  readonly accept: (planId: string) => Promise<Answer<PlanAcceptance & Refusal>>;
}

/** The demo on its first morning, with the plan made by hand offered to the dispatcher. */
export const openFlightDesk = async (): Promise<FlightDesk> => {
  const server = await createTestServer();
  const manager = await server.as('operations manager');
  const dispatcher = await server.as('dispatcher');
  const planId = await solvedRun(server);
  const flight = async (id: string) => (await manager.get<ShownFlight>(`/api/flights/${id}`)).body;
  const act: FlightDesk['act'] = async (who, id, path, body = {}) => {
    const { revision } = await flight(id);
    return who.post(`/api/flights/${id}/${path}`, body, { headers: { 'If-Match': `"${revision}"` } });
  };
  const accept = (id: string) => dispatcher.post<PlanAcceptance & Refusal>(`/api/plans/${id}/accept`, {});
  await accept(planId);
  return {
    server,
    manager,
    dispatcher,
    planId,
    flight,
    accept,
    report: (who, id, kind, rest = {}) =>
      who.put(`/api/flight-reports/${randomUUID()}`, reportBody(id, kind, rest)),
    act,
    give: async (id) => {
      await act(dispatcher, id, 'approve');
      return (await act(dispatcher, id, 'give')).body;
    },
    crewOf: async (id) => crewMember(server, (await flight(id)).pilot ?? 'nobody'),
  };
};

/** The territory's clock runs on from here. */
export const setClock = async (
  { server }: Pick<FlightDesk, 'server'>,
  clockStartsAt: string,
): Promise<void> => {
  const setUp = await server.as('set-up');
  const path = '/api/settings/current';
  const { body } = await setUp.get<{ version: number; data: object }>(path);
  const { status } = await setUp.change(path, body.version, { ...body.data, clockStartsAt });
  if (status >= 300) throw new Error(`The clock could not be set to ${clockStartsAt}: ${status}`);
};

/** What a report says, by radio unless `rest` says otherwise. */
export const reportBody = (flight: string, kind: string, rest: object = {}) => ({
  kind,
  flight,
  happenedAt: '2027-06-14T06:01Z',
  writtenAt: '2027-06-14T06:02Z',
  means: 'radio',
  ...rest,
});

/** "Crew FW2", signed in: made where there is no such person yet. */
const crewMember = async (server: TestServer, crew: string): Promise<Client> => {
  const people = await server.database.query('select from accounts where name = $1', [crew.toLowerCase()]);
  if ((people as readonly unknown[]).length === 0) {
    const name = crew.toLowerCase();
    const person = personSchema.parse({ name, fullName: `Crew ${crew}`, roles: ['pilot'], crew });
    const { manager } = server.database;
    await server.app.get(PeopleService).insert(manager, { id: randomUUID(), ...person }, testPassword, false);
  }
  const client = server.stranger();
  await client.signIn(crew.toLowerCase(), testPassword);
  return client;
};
