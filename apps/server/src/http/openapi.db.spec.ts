import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';

interface Operation {
  readonly operationId: string;
  readonly security?: readonly Readonly<Record<string, unknown>>[];
  readonly parameters: readonly { readonly name: string; readonly in: string }[];
  readonly responses: Readonly<Record<string, { readonly $ref?: string; readonly content?: object }>>;
}
interface Document {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: Readonly<
    Record<'schemas' | 'responses' | 'securitySchemes', Readonly<Record<string, unknown>>>
  >;
}

let server: TestServer;
let text: string;
let document: Document;
let operations: readonly (Operation & { readonly method: string; readonly path: string })[];
beforeAll(async () => {
  server = await createTestServer({ content: 'accounts' });
  ({ body: document } = await server.stranger().get<Document>('/api/openapi.json'));
  text = JSON.stringify(document);
  operations = Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ ...operation, method, path })),
  );
});
afterAll(() => server.close());

const one = (method: string, path: string) => document.paths[path]![method]!;
const headersOf = ({ parameters }: Operation) =>
  parameters.filter((each) => each.in === 'header').map(({ name }) => name);

describe('the OpenAPI document', () => {
  it('says of every route how a stranger is refused, and asks for the session of all but two', () => {
    const open = operations.filter(({ security }) => security?.length === 0);
    expect(open.map(({ method, path }) => `${method} ${path}`)).toEqual(['get /health', 'post /api/sign-in']);
    const others = operations.filter((each) => !open.includes(each));
    expect(others.length).toBeGreaterThan(150);
    for (const { path, method, responses, security } of others) {
      expect([method, path, Object.keys(responses)]).toEqual([
        method,
        path,
        expect.arrayContaining(['401', '403', '503']),
      ]);
      for (const needed of security!)
        expect(document.components.securitySchemes).toHaveProperty(Object.keys(needed));
    }
  });

  it('names the headers of a change: the token of the page, and the version that was read', () => {
    expect(headersOf(one('put', '/api/caches/{id}'))).toEqual(['If-Match', 'If-None-Match', 'X-CSRF-Token']);
    expect(Object.keys(one('put', '/api/caches/{id}').responses)).toEqual(
      expect.arrayContaining(['400', '404', '409', '412', '415', '422', '428']),
    );
    expect(headersOf(one('post', '/api/flights/{id}/approve'))).toContain('If-Match');
    expect(headersOf(one('get', '/api/caches/{id}'))).toEqual([]);
    expect(headersOf(one('put', '/api/movements/{id}'))).toEqual(['X-CSRF-Token']);
  });

  it('has every operation once, and everything that is referred to', () => {
    const ids = operations.map(({ operationId }) => operationId);
    expect(new Set(ids).size).toBe(ids.length);
    const named = [...text.matchAll(/"\$ref":"#\/components\/(\w+)\/([^"]+)"/g)];
    expect(named.length).toBeGreaterThan(500);
    for (const [, kind, name] of named)
      expect(document.components[kind as 'schemas']).toHaveProperty([name!]);
  });

  it('says of every route what it answers where all is well', () => {
    const silent = operations.filter(({ responses }) => {
      const done = Object.entries(responses).filter(([status]) => status.startsWith('2'));
      return (
        done.length === 0 ||
        done.some(([status, { content }]) => (status === '204') === (content !== undefined))
      );
    });
    expect(silent.map(({ method, path }) => `${method} ${path}`)).toEqual([]);
    expect(operations.filter(({ responses }) => Object.keys(responses).includes('201'))).toEqual([]);
  });

  it('gives units in words of its own: x-unit', () => {
    expect(text).toContain('"x-unit":"kg"');
    expect(text).not.toMatch(/"unit":"/);
  });
});
