import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';

let server: TestServer;
beforeAll(async () => {
  server = await createTestServer({ content: 'accounts' });
});
afterEach(() => void vi.restoreAllMocks());
afterAll(() => server.close());

const health = async () => {
  const { status, body } = await server.stranger().get('/health');
  return { status, body };
};
const up = { status: 'up', database: 'up', queue: 'up', solver: 'up' };

describe('/health', () => {
  it('asks the database, the queue and the solver, and tells anybody', async () => {
    expect(await health()).toEqual({ status: 200, body: up });
  });

  it('says which part is down and no more, and the log says why', async () => {
    vi.spyOn(server.queues, 'check').mockRejectedValue(new Error('no route to redis.internal'));
    expect(await health()).toEqual({ status: 503, body: { ...up, status: 'down', queue: 'down' } });
    expect(server.log.findLast((line) => line.includes('"part":"queue"'))).toContain('no route to redis');
    vi.restoreAllMocks();
    vi.spyOn(server.database, 'query').mockRejectedValue(new Error('gone'));
    expect(await health()).toEqual({ status: 503, body: { ...up, status: 'down', database: 'down' } });
  });
});

describe('the log', () => {
  it('is one JSON object a line, joined by the number of the request that the answer carries too', async () => {
    const { headers } = await server.stranger().get('/api/me?token=hush');
    const lines = server.log.map((line) => JSON.parse(line) as Record<string, unknown>);
    const ofThis = lines.filter(({ requestId }) => requestId === headers.get('X-Request-Id'));
    expect(ofThis).toEqual([
      expect.objectContaining({ message: 'request', method: 'GET', path: '/api/me', status: 401 }),
    ]);
    expect(server.log.join()).not.toContain('hush');
  });
});
