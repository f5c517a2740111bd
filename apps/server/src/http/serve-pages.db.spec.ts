import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pagePaths } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';

let server: TestServer;
let pages: string;
beforeAll(async () => {
  pages = await mkdtemp(join(tmpdir(), 'drumline-pages-'));
  await mkdir(join(pages, 'assets'));
  await writeFile(join(pages, 'index.html'), '<title>Drumline</title>');
  await writeFile(join(pages, 'office-worker.js'), 'const version = 1;');
  await writeFile(join(pages, 'assets', 'index-4f2a.js'), 'start();'.repeat(1000));
  server = await createTestServer({ content: 'empty', pages });
});
afterAll(async () => {
  await server.close();
  await rm(pages, { recursive: true });
});

const get = (path: string) => fetch(server.url + path);

describe('the pages', () => {
  it.each(['/', ...pagePaths, '/load/F05'])('%s is a page, and asked for anew each time', async (path) => {
    const answer = await get(path);
    expect(await answer.text()).toContain('<title>Drumline</title>');
    expect(answer.headers.get('Cache-Control')).toBe('no-cache');
  });

  it.each([
    '/api',
    '/api/no-such-thing',
    '/mornings',
    '/assets/no-such-file.js',
    '/assets/../index.html',
    '/.env',
  ])('%s is none', async (path) => {
    const answer = await get(path);
    expect([answer.status, answer.headers.get('Content-Type')]).toEqual([
      404,
      expect.stringContaining('application/problem+json'),
    ]);
  });

  it('say to a person at an address of nothing that there is none; what a program asks for stays a problem', async () => {
    const accept = 'text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8';
    const opened = (path: string) => fetch(server.url + path, { headers: { Accept: accept } });
    const answer = await opened('/nowhere');
    expect([answer.status, await answer.text()]).toEqual([404, '<title>Drumline</title>']);
    for (const path of ['/api/nowhere', '/assets/nowhere.js', '/phone/nowhere'])
      expect((await opened(path)).headers.get('Content-Type'), path).toContain('application/problem+json');
  });

  it('let the browser keep files whose name holds their hash', async () => {
    const answer = await get('/assets/index-4f2a.js');
    expect(answer.headers.get('Cache-Control')).toBe('public, max-age=31536000, immutable');
  });

  it('have their service worker asked for anew each time', async () => {
    const answer = await get('/office-worker.js');
    expect(await answer.text()).toBe('const version = 1;');
    expect(answer.headers.get('Cache-Control')).toBe('no-cache');
    expect(answer.headers.get('Content-Type')).toContain('javascript');
  });

  it('send their program compressed', async () => {
    const answer = await get('/assets/index-4f2a.js');
    expect(answer.headers.get('Content-Encoding')).toMatch(/^(gzip|br)$/);
    expect(await answer.text()).toHaveLength(8_000);
  });

  it('may run, load and ask nothing that is not from here', async () => {
    const policy = (await get('/')).headers.get('Content-Security-Policy')!;
    expect(policy.split(';')).toEqual(
      expect.arrayContaining([
        "default-src 'self'",
        "script-src 'self'",
        "style-src 'self'",
        "connect-src 'self'",
        "frame-ancestors 'none'",
      ]),
    );
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
  });
});

describe('a server whose pages are not built', () => {
  it('says so where a page is asked for, and answers the API', async () => {
    const bare = await createTestServer({ content: 'empty', pages: join(pages, 'nothing-here') });
    const page = await fetch(`${bare.url}/morning`);
    expect([page.status, await page.text()]).toEqual([503, expect.stringContaining('npm run build-pages')]);
    expect((await fetch(`${bare.url}/api/me`)).status).toBe(401);
    expect((await fetch(`${bare.url}/office-worker.js`)).status).toBe(404);
    await bare.close();
  });
});
