import { randomUUID } from 'node:crypto';
import { roles } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PeopleService } from '../people/people.service.js';
import type { Answer, Client } from '../testing/client.js';
import { createTestServer, type TestServer, testPassword } from '../testing/create-test-server.js';
import { type Draw, drawFrom, oneOf, type Schema, sampleOf, spoil } from '../testing/fuzz.js';
import { solvedRun } from '../testing/hand-plan.js';

interface Operation {
  readonly parameters?: readonly { readonly name: string; readonly in: string; readonly schema: Schema }[];
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly schema: Schema }>> };
}
interface OpenApi {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, Schema>> };
}
interface Route {
  readonly method: string;
  readonly path: string;
  readonly query: readonly { readonly name: string; readonly schema: Schema }[];
  readonly body: { readonly type: string; readonly schema: Schema } | null;
}

let server: TestServer;
let document: OpenApi;
let routes: readonly Route[];
/** Ids of what is there, by the path of the list. */
let known: ReadonlyMap<string, readonly string[]>;
let everyRole: Client;
let fieldLeader: Client;
beforeAll(async () => {
  server = await createTestServer();
  ({ body: document } = await server.stranger().get<OpenApi>('/api/openapi.json'));
  routes = Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => routeOf(method, path, operation)),
  );
  fieldLeader = await server.as('field leader');
  everyRole = await signInWithEveryRole();
  await everyRole.post(`/api/plans/${await solvedRun(server)}/accept`, {});
  known = await idsOfWhatIsThere();
});
afterAll(() => server.close());

const routeOf = (method: string, path: string, { parameters = [], requestBody }: Operation): Route => {
  const [content] = Object.entries(requestBody?.content ?? {});
  return {
    method: method.toUpperCase(),
    path,
    query: parameters.filter((parameter) => parameter.in === 'query'),
    body: content === undefined ? null : { type: content[0], schema: content[1].schema },
  };
};

const signInWithEveryRole = async (): Promise<Client> => {
  const person = {
    name: 'everybody',
    fullName: 'Every role',
    roles: roles.filter((role) => role !== 'field leader'),
    crew: 'FW1',
    programmes: [],
    disabled: false,
  };
  const { manager } = server.database;
  await server.app.get(PeopleService).insert(manager, { id: randomUUID(), ...person }, testPassword, false);
  const client = server.stranger();
  await client.signIn(person.name, testPassword);
  return client;
};

const idsOfWhatIsThere = async (): Promise<Map<string, readonly string[]>> => {
  const lists = routes.filter(({ method, path }) => method === 'GET' && !path.includes('{'));
  const found = new Map<string, readonly string[]>();
  for (const { path } of lists) {
    const { body } = await everyRole.get<{ items?: readonly Record<string, unknown>[] }>(path);
    const others = (body.items ?? []).filter((item) => item.name !== 'everybody' && item.thisOne !== true);
    const ids = others.map((item) => item.id ?? item.number ?? item.place ?? item.code);
    found.set(path, ids.filter((id) => typeof id === 'string').slice(0, 20));
  }
  return found;
};

const named = (reference: string): Schema => document.components.schemas[reference.split('/').at(-1)!]!;

const oddIds = ['%00', '..%2F..', "'", 'x'.repeat(300), '%F0%9F%9B%A2', '%ED%A0%80', '-1', 'current', '%25'];

const addressOf = ({ path, query }: Route, draw: Draw, isOdd: boolean): string => {
  const collection = path.slice(0, path.indexOf('/{'));
  const there = known.get(collection) ?? [];
  const filled = path.replace(/\{\w+\}/g, () => {
    if (isOdd && draw(2) === 0) return oneOf(draw, oddIds);
    return draw(4) > 0 && there.length > 0 ? encodeURIComponent(oneOf(draw, there)) : randomUUID();
  });
  const given = query.filter(() => draw(2) === 0);
  const values = given.map(({ name, schema }) => {
    const value = sampleOf(schema, named, draw);
    return `${name}=${isOdd && draw(2) === 0 ? oneOf(draw, oddIds) : encodeURIComponent(String(value))}`;
  });
  return values.length === 0 ? filled : `${filled}?${values.join('&')}`;
};

const bodyOf = ({ body }: Route, draw: Draw, isOdd: boolean): unknown => {
  if (body === null) return undefined;
  const sample = body.type.includes('json') ? sampleOf(body.schema, named, draw) : 'place,type\nXLOR,A\n';
  if (!isOdd) return sample;
  return draw(8) === 0 ? oneOf(draw, ['{"half":', '', '[', '"', 'null', '\u0000']) : spoil(sample, draw);
};

const headersOf = (draw: Draw): Record<string, string> =>
  oneOf<Record<string, string>>(draw, [
    { 'If-None-Match': '*' },
    { 'If-Match': '"1"' },
    { 'If-Match': '"2"' },
    { 'If-Match': 'nonsense' },
    {},
  ]);

/** Null: as it should be. */
const complaintAbout = ({ status, headers, body }: Answer): string | null => {
  if (status >= 500) return `answers ${status}: ${JSON.stringify(body)}`;
  if (status < 400) return null;
  const { type, status: said, detail } = body as { type?: string; status?: number; detail?: string };
  const isProblem =
    headers.get('Content-Type')?.startsWith('application/problem+json') === true &&
    type?.startsWith('urn:drumline:problem:') === true &&
    said === status &&
    (detail ?? '') !== '';
  return isProblem ? null : `answers ${status} with no problem document: ${JSON.stringify(body)}`;
};

/** Sends every route some requests that are right and more that are not; returns what should not have been. */
const fuzz = async (
  who: Client,
  rounds: number,
  isRight: (route: Route, status: number) => boolean = () => true,
): Promise<string[]> => {
  const complaints: string[] = [];
  for (const [index, route] of routes.entries()) {
    if (route.path === '/api/sign-out') continue;
    const draw = drawFrom(1 + index);
    for (let round = 0; round < rounds; round += 1) {
      const isOdd = round > 0;
      const address = addressOf(route, draw, isOdd);
      const body = bodyOf(route, draw, isOdd);
      const answer = await who.send(route.method, address, body, { headers: headersOf(draw) });
      const complaint =
        complaintAbout(answer) ?? (isRight(route, answer.status) ? null : `answers ${answer.status}`);
      if (complaint === null) continue;
      const sent = JSON.stringify(body)?.slice(0, 300) ?? '';
      const cause = answer.status >= 500 ? server.log.findLast((line) => line.includes('"error"')) : '';
      complaints.push(`${route.method} ${address} ${sent} ${complaint} ${cause?.slice(0, 600)}`);
    }
  }
  return complaints;
};

describe('whatever is sent', () => {
  it('by a stranger is refused, as a problem document', { timeout: 300_000 }, async () => {
    const open = new Set(['/health', '/api/sign-in']);
    const complaints = await fuzz(
      server.stranger(),
      2,
      ({ path }, status) => open.has(path) || (status >= 400 && status < 500),
    );
    expect(complaints).toEqual([]);
  });

  it("by a customer's field leader changes nothing of the operator's", { timeout: 300_000 }, async () => {
    const own = /^\/(health|api\/(sign-in|me\b|own-programmes|cache-levels))/;
    const complaints = await fuzz(
      fieldLeader,
      3,
      ({ path }, status) => own.test(path) || (status >= 400 && status < 500),
    );
    expect(complaints).toEqual([]);
  });

  it('by somebody with every role is no 500', { timeout: 900_000 }, async () => {
    const taken = new Set<string>();
    const complaints = await fuzz(everyRole, Number(process.env.FUZZ_ROUNDS ?? 10), (route, status) => {
      if (status < 400) taken.add(`${route.method} ${route.path}`);
      return status !== 401 || route.path === '/api/sign-in';
    });
    expect(complaints).toEqual([]);
    expect(taken.size).toBeGreaterThan(routes.length / 2); // what is sent gets past the door
  });

  it('of 10 MB is refused on every route', { timeout: 300_000 }, async () => {
    const large = JSON.stringify({ text: 'x'.repeat(10_000_000) });
    for (const { method, path, body } of routes) {
      if (body === null) continue;
      const address = path.replace(/\{\w+\}/g, randomUUID());
      const { status } = await everyRole.send(method, address, large, {});
      expect([method, path, status]).toEqual([method, path, 413]);
    }
  });
});
