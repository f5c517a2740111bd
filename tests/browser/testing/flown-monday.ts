import { randomUUID } from 'node:crypto';
import { parseScenario } from '@drumline/contract';
import { planByHand } from '@drumline/planning';
import { expect } from 'vitest';
import { openDatabase } from '../../../apps/server/src/database/data-source.js';
import { runningDatabaseUrl } from '../../../apps/server/src/embedded-postgres/open-embedded-database.js';
import type { Client } from '../../../apps/server/src/testing/client.js';

interface Flight {
  readonly id: string;
  readonly revision: number;
  readonly stops: readonly { readonly place: string }[];
  readonly toPlace: string;
  readonly loads: readonly { readonly place: string; readonly drum: string | null }[];
}

interface Desk {
  readonly manager: Client;
  readonly dispatcher: Client;
  readonly setUp: Client;
  /** Of the server whose Monday it is. */
  readonly dataDir: string;
}

/**
 * The state that product.md, T1, begins with: the plan made by hand is in force, F01 to F04 are flown and reported, the
 * helicopters have drawn, F05 to F07 are with their pilots, the others offered; it is Tuesday, 06:53.
 */
export const flownMonday = async (desk: Desk): Promise<void> => {
  await acceptHandPlan(desk);
  // Later in the day than the morning's count at XESK.
  await setClock(desk, '2027-06-14T18:00Z');
  for (const id of ['F01', 'F02', 'F03', 'F04']) await fly(desk, id);
  await draw(desk, { place: 'XESK', litres: 450, into: 'H1', programme: 'P1' });
  await draw(desk, { place: 'XLOR', litres: 795, into: 'H2', programme: 'P3' });
  await setClock(desk, '2027-06-15T06:53Z');
  for (const id of ['F05', 'F06', 'F07']) await give(desk, id);
};

/** There is no act that takes a plan made by hand for a solved one: it is written as if it had been found. */
export const acceptHandPlan = async ({
  manager,
  dataDir,
}: Pick<Desk, 'manager' | 'dataDir'>): Promise<void> => {
  const { body: document } = await manager.get('/api/scenario');
  const parsed = parseScenario(document);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const { scenario } = parsed;
  const { plan } = planByHand(scenario, { endTarget: 'hand plan', weather: null });
  const { body: me } = await manager.get<{ id: string; fullName: string }>('/api/me');
  const id = randomUUID();
  const database = await openDatabase((await runningDatabaseUrl({ dataDir }))!, 1);
  await database.query(
    `insert into plan_runs (id, request, scenario, flight_revisions, state, requested_by, requested_by_name, outcome, finished_at)
     values ($1, $2, $3, '{}', 'solved', $4, $5, $6, now())`,
    [
      id,
      { endTarget: 'hand plan', seconds: 1, seed: 1, frozen: [] },
      scenario,
      me.id,
      me.fullName,
      { status: 'solved', plan: { ...plan, offeredDays: plan.days }, proof: plan.proof },
    ],
  );
  await database.destroy();
  good(await manager.post(`/api/plans/${id}/accept`, {}));
};

const fly = async (desk: Desk, id: string): Promise<void> => {
  const { loads, stops, toPlace } = await give(desk, id);
  const report = (kind: string, minute: string, rest: object = {}) =>
    desk.dispatcher
      .put(`/api/flight-reports/${randomUUID()}`, { kind, flight: id, ...at(minute), ...rest })
      .then(good);
  await report('take off', '01');
  for (const { place, drum } of loads)
    await move(desk, {
      kind: 'left at',
      ...at('02'),
      flight: id,
      leg: 1,
      drum,
      place,
      condition: 'sound',
      foundMillilitres: null,
    });
  expect(loads.length).toBeGreaterThan(3);
  expect(stops).toHaveLength(1);
  await report('land', '03', { place: toPlace });
  await report('report', '04');
};

interface Drawn {
  readonly place: string;
  readonly litres: number;
  readonly into: string;
  readonly programme: string;
}

/** Drum after drum, the last one in part. */
const draw = async (desk: Desk, { place, litres, into, programme }: Drawn): Promise<void> => {
  const { body } = await desk.manager.get<{ drums: { number: string; place: string; content: string }[] }>(
    '/api/scenario',
  );
  const sealed = body.drums.filter((drum) => drum.place === place && drum.content === 'filled sealed');
  for (let left = litres, next = 0; left > 0; left -= 200, next += 1)
    await move(desk, {
      kind: 'drawn',
      ...at('05'),
      drum: sealed[next]!.number,
      place,
      millilitres: Math.min(200, left) * 1000,
      into,
      programme,
      leftMillilitres: null,
    });
};

const give = async ({ dispatcher }: Desk, id: string): Promise<Flight> => {
  for (const act of ['approve', 'give']) {
    const { revision } = (await dispatcher.get<Flight>(`/api/flights/${id}`)).body;
    good(
      await dispatcher.post(`/api/flights/${id}/${act}`, {}, { headers: { 'If-Match': `"${revision}"` } }),
    );
  }
  return (await dispatcher.get<Flight>(`/api/flights/${id}`)).body;
};

const at = (minute: string) => {
  const time = `2027-06-14T15:${minute}Z`;
  return { happenedAt: time, writtenAt: time, means: 'radio' };
};

const move = async ({ dispatcher }: Desk, body: object): Promise<void> => {
  good(await dispatcher.put(`/api/movements/${randomUUID()}`, { witnesses: [], ...body }));
};

const setClock = async ({ setUp }: Desk, clockStartsAt: string): Promise<void> => {
  const path = '/api/settings/current';
  const { body } = await setUp.get<{ version: number; data: object }>(path);
  good(await setUp.change(path, body.version, { ...body.data, clockStartsAt }));
};

const good = ({ status, body }: { readonly status: number; readonly body: unknown }): void => {
  if (status >= 300) throw new Error(`${status}: ${JSON.stringify(body)}`);
};
