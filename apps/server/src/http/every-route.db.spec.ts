import { randomUUID } from 'node:crypto';
import { roles } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';

interface OpenApi {
  readonly paths: Readonly<Record<string, Readonly<Record<string, { readonly requestBody?: unknown }>>>>;
}

let server: TestServer;
let routes: { method: string; path: string; hasBody: boolean }[];
beforeAll(async () => {
  server = await createTestServer();
  const { body } = await server.stranger().get<OpenApi>('/api/openapi.json');
  routes = Object.entries(body.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, { requestBody }]) => ({
      method: method.toUpperCase(),
      path: path.replace(/\{\w+\}/g, randomUUID()),
      hasBody: requestBody !== undefined,
    })),
  );
});
afterAll(() => server.close());

const ownThings = /^\/api\/(sign-in|sign-out|me\b)/;
/** What is asked for decides who may: the body is read first, or the thing looked up. Each has its own tests. */
const rightByContent = new Set([
  'POST /api/movements',
  'PUT /api/movements/:id',
  'PUT /api/holds/:id',
  'PUT /api/cases/:id/closing',
  'PUT /api/proposals/:id/agreement',
  'DELETE /api/proposals/:id',
]);
/** Questions with a body: they change nothing, and everybody of the operator may ask. */
const questions = new Set([
  'POST /api/payload',
  'POST /api/projections/consequence',
  'POST /api/touched-flights',
]);
const open = new Set(['GET /health', 'POST /api/sign-in']);
const versions = { 'If-None-Match': '*' };

describe('every route', () => {
  it('is in the OpenAPI document', () => {
    expect(routes.length).toBeGreaterThan(80);
  });

  it('refuses a stranger, as a problem document', async () => {
    for (const { method, path } of routes) {
      if (open.has(`${method} ${path}`)) continue;
      const answer = await server.stranger().send(method, path, method === 'GET' ? undefined : {}, {});
      expect([method, path, answer.status]).toEqual([method, path, 401]);
      expect(answer.headers.get('Content-Type')).toBe('application/problem+json; charset=utf-8');
    }
  });

  it('that changes something refuses those of the operator who have no part in it', async () => {
    const changing = routes.filter(({ method, path }) => method !== 'GET' && !ownThings.test(path));
    const refusing = new Set<string>();
    for (const role of roles.filter((each) => each !== 'field leader')) {
      const client = await server.as(role);
      for (const { method, path, hasBody } of changing) {
        const { status } = await client.send(method, path, hasBody ? {} : undefined, { headers: versions });
        if (status === 403) refusing.add(`${method} ${path}`);
      }
    }
    expect(changing.length).toBeGreaterThan(40);
    const open = changing
      .map(({ method, path }) => `${method} ${path}`)
      .filter((each) => !refusing.has(each));
    expect(new Set(open.map((each) => each.replace(/[0-9a-f-]{36}/, ':id')))).toEqual(
      new Set([...rightByContent, ...questions]),
    );
  });

  it('refuses a body with a field it does not know', async () => {
    const manager = await server.as('operations manager');
    for (const { method, path, hasBody } of routes) {
      if (!hasBody) continue;
      const { status } = await manager.send(method, path, { 'no such field': 1 }, { headers: versions });
      expect([method, path, status >= 400 && status < 500]).toEqual([method, path, true]);
    }
  });

  it('refuses 10 MB, and JSON that is none', async () => {
    const manager = await server.as('operations manager');
    const large = JSON.stringify({ text: 'x'.repeat(10_000_000) });
    for (const { method, path, hasBody } of routes) {
      if (!hasBody) continue;
      const broken = await manager.send(method, path, '{"half":', { headers: versions });
      expect([method, path, broken.status]).toEqual([method, path, 400]);
    }
    const tooLarge = await manager.send('PUT', `/api/caches/XLOR`, large, { headers: versions });
    expect(tooLarge.status).toBe(413);
  });

  it('says of a body of another kind that it is not read, and of none that nothing was sent', async () => {
    const manager = await server.as('operations manager');
    const send = (body: string, type: string) =>
      manager.send('PUT', '/api/caches/XLOR', body, { headers: { ...versions, 'Content-Type': type } });
    expect((await send('place=XLOR', 'application/x-www-form-urlencoded')).status).toBe(415);
    expect((await send('place\nXLOR', 'text/csv')).status).toBe(415);
    const nothing = { status: 400, faults: [{ path: 'body', problem: 'nothing was sent.' }] };
    const bodyless = await manager.send('PUT', '/api/caches/XLOR', undefined, { headers: versions });
    expect(bodyless.body).toMatchObject(nothing);
    const file = (body: string, type: string) =>
      manager.send('POST', '/api/csv/helicopter-tasks', body, { headers: { 'Content-Type': type } });
    expect((await file('{}', 'application/json')).status).toBe(415);
    expect((await file('', 'text/csv')).body).toMatchObject(nothing);
  });

  it('says of JSON without a byte that nothing was sent: it is no empty list of fields', async () => {
    const manager = await server.as('operations manager');
    const wanting = routes.filter(({ hasBody, path }) => hasBody && !path.startsWith('/api/csv/'));
    const said: string[] = [];
    for (const { method, path } of wanting) {
      const { status, body } = await manager.send<{ detail: string }>(method, path, '', {
        headers: versions,
      });
      expect([method, path, status === 400 || status === 403]).toEqual([method, path, true]);
      if (body.detail.startsWith('The body is empty: send application/json.')) said.push(path);
    }
    expect(said.length).toBeGreaterThan(40);
  });

  it('answers a wrong id and a wrong query with what to do, never with a 500', async () => {
    const manager = await server.as('operations manager');
    for (const { method, path } of routes) {
      for (const id of ['%00', '..%2F', "'", 'x'.repeat(300), '%F0%9F%9B%A2']) {
        const odd = path.replace(/[0-9a-f]{8}-[0-9a-f-]{27}/g, id);
        const withQuery = `${odd}?limit=-1&after=%00`;
        const { status } = await manager.send(method, withQuery, method === 'GET' ? undefined : {}, {
          headers: versions,
        });
        expect([method, withQuery, status < 500]).toEqual([method, withQuery, true]);
        if (path === odd) break;
      }
    }
  });

  it('says what is wrong by the field, and what to do', async () => {
    const manager = await server.as('operations manager');
    const { status, body, headers } = await manager.make('/api/caches/XLOR', {
      place: 'XLOR',
      minimumLitres: -5,
    });
    expect(status).toBe(422);
    expect(body).toMatchObject({ type: 'urn:drumline:problem:faults', status: 422 });
    expect((body as { faults: unknown[] }).faults).toContainEqual({
      path: 'minimumLitres',
      problem: '-5 is too small.',
      remedy: 'Give at least 0.',
    });
    expect((body as { instance: string }).instance).toContain(headers.get('X-Request-Id'));
  });
});
