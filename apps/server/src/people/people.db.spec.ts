import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createTestServer, type TestServer, testPassword } from '../testing/create-test-server.js';
import { PeopleService } from './people.service.js';

let server: TestServer;
beforeAll(async () => {
  server = await createTestServer({ content: 'accounts' });
});
afterAll(() => server.close());

describe('signing in', () => {
  it('tells who one is and what one may do', async () => {
    const dispatcher = await server.as('dispatcher');
    const { status, body } = await dispatcher.get<{ name: string; may: { act: string; limit: string }[] }>(
      '/api/me',
    );
    expect(status).toBe(200);
    expect(body.name).toBe('dispatcher');
    expect(body.may).toContainEqual(
      expect.objectContaining({ act: 'run plan', limit: 'from now, inside the week' }),
    );
  });

  it('says the same to a wrong name and to a wrong password', async () => {
    const stranger = server.stranger();
    const wrongName = await stranger.signIn('nobody-of-that-name', testPassword);
    const wrongPassword = await stranger.signIn('pilot', 'something else');
    expect(wrongName.status).toBe(401);
    expect(wrongPassword.status).toBe(401);
    const detail = ({ body }: { body: unknown }) => (body as { detail: string }).detail;
    expect(detail(wrongName)).toBe(detail(wrongPassword));
  });

  it('keeps the cookie from scripts and from other sites', async () => {
    const { headers } = await server.stranger().signIn('accounts', testPassword);
    expect(headers.getSetCookie()[0]).toMatch(/HttpOnly; SameSite=Lax/);
  });

  it('refuses to be guessed at: after 8 wrong passwords the right one waits too', async () => {
    const stranger = server.stranger();
    for (let attempt = 0; attempt < 8; attempt += 1) await stranger.signIn('engineering', `guess ${attempt}`);
    const { status, headers } = await stranger.signIn('engineering', testPassword);
    expect(status).toBe(429);
    expect(Number(headers.get('Retry-After'))).toBeGreaterThan(0);
  });

  it('with a new one-time password is open at once to a name that others locked by guessing', async () => {
    const stranger = server.stranger();
    for (let attempt = 0; attempt < 8; attempt += 1) await stranger.signIn('dispatcher', `guess ${attempt}`);
    const locked = await stranger.signIn('dispatcher', testPassword);
    expect([locked.status, locked.body]).toEqual([
      429,
      expect.objectContaining({ detail: expect.stringContaining('by you or by somebody else') }),
    ]);
    const setUp = await server.as('set-up');
    const { body: people } = await setUp.get<{ items: { id: string; name: string }[] }>(
      '/api/people?limit=100',
    );
    const { id } = people.items.find(({ name }) => name === 'dispatcher')!;
    const given = await setUp.post<{ oneTimePassword: string }>(
      `/api/people/${id}/one-time-password`,
      undefined,
    );
    const dispatcher = server.stranger();
    expect((await dispatcher.signIn('dispatcher', given.body.oneTimePassword)).status).toBe(200);
    const change = { current: given.body.oneTimePassword, next: testPassword };
    expect((await dispatcher.put('/api/me/password', change)).status).toBe(204);
  });

  it('keeps no password and no cookie, in the log or in the database', async () => {
    const stranger = server.stranger();
    const { headers } = await stranger.signIn('storekeeper', testPassword);
    const cookie = headers.getSetCookie()[0]!.split(/[=;]/)[1]!;
    const rows = JSON.stringify(await server.database.query('select * from sessions, accounts'));
    for (const kept of [rows, server.log.join('\n')]) {
      expect(kept).not.toContain(testPassword);
      expect(kept).not.toContain(cookie);
    }
  });
});

describe('a session', () => {
  it('ends when its owner ends it from another browser', async () => {
    const phone = await server.as('pilot');
    const office = await server.as('pilot');
    const { body } = await office.get<{ items: { id: string; thisOne: boolean }[] }>('/api/me/sessions');
    for (const { id, thisOne } of body.items) {
      if (!thisOne) expect((await office.delete(`/api/me/sessions/${id}`)).status).toBe(204);
    }
    expect((await phone.get('/api/me')).status).toBe(401);
    expect((await office.get('/api/me')).status).toBe(200);
  });

  it('cannot be ended by somebody else', async () => {
    const pilot = await server.as('pilot');
    const { body } = await pilot.get<{ items: { id: string }[] }>('/api/me/sessions');
    const other = await server.as('helicopter crew');
    expect((await other.delete(`/api/me/sessions/${body.items[0]!.id}`)).status).toBe(404);
    expect((await pilot.get('/api/me')).status).toBe(200);
  });

  it('is refused to a page of another site', async () => {
    const pilot = await server.as('pilot');
    const withoutToken = await pilot.post('/api/sign-out', undefined, {
      headers: { 'X-CSRF-Token': 'guessed' },
    });
    const fromElsewhere = await pilot.post('/api/sign-out', undefined, {
      headers: { 'Sec-Fetch-Site': 'cross-site' },
    });
    expect([withoutToken.status, fromElsewhere.status]).toEqual([403, 403]);
    expect((await pilot.get('/api/me')).status).toBe(200);
  });

  it('is over after signing out', async () => {
    const pilot = await server.as('pilot');
    expect((await pilot.post('/api/sign-out', undefined)).status).toBe(204);
    expect((await pilot.get('/api/me')).status).toBe(401);
  });
});

describe('people', () => {
  const newPilot = { name: 'r.lindqvist', fullName: 'R. Lindqvist', roles: ['pilot'], crew: 'FW2' };

  it('gets a one-time password that has to be changed before anything else', async () => {
    const setUp = await server.as('set-up');
    const id = randomUUID();
    const made = await setUp.make<{ oneTimePassword: string }>(`/api/people/${id}`, newPilot);
    expect(made.status).toBe(200);
    const pilot = server.stranger();
    const overheard = server.stranger();
    await overheard.signIn('r.lindqvist', made.body.oneTimePassword);
    await pilot.signIn('r.lindqvist', made.body.oneTimePassword);
    expect((await overheard.get('/api/me')).status).toBe(401); // one session at a time until it is changed
    expect((await pilot.get('/api/surface-reports')).status).toBe(403);
    const change = { current: made.body.oneTimePassword, next: 'a password of my own' };
    expect((await pilot.put('/api/me/password', change)).status).toBe(204);
    expect((await pilot.get('/api/surface-reports')).status).toBe(200);
  });

  it('are made once, however often the request is sent', async () => {
    const setUp = await server.as('set-up');
    const id = randomUUID();
    const person = { ...newPilot, name: 'b.achterberg' };
    const answers = await Promise.all([1, 2, 3].map(() => setUp.make(`/api/people/${id}`, person)));
    expect(answers.map(({ status }) => status).filter((status) => status !== 200 && status !== 412)).toEqual(
      [],
    );
    const [{ count }] = await server.database.query(
      `select count(*)::int from accounts where name = 'b.achterberg'`,
    );
    expect(count).toBe(1);
  });

  it('two changing one person at once: one wins, the other is told', async () => {
    const setUp = await server.as('set-up');
    const id = randomUUID();
    await setUp.make(`/api/people/${id}`, { ...newPilot, name: 'k.two' });
    const answers = await Promise.all(
      ['First', 'Second'].map((fullName) =>
        setUp.change(`/api/people/${id}`, 1, { ...newPilot, name: 'k.two', fullName }),
      ),
    );
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 412]);
  });

  it('cannot be made operations manager by set-up alone', async () => {
    const setUp = await server.as('set-up');
    const made = await setUp.make(`/api/people/${randomUUID()}`, {
      ...newPilot,
      name: 'k.three',
      roles: ['operations manager'],
    });
    expect(made.status).toBe(403);
  });

  it('who is taken out is signed out', async () => {
    const manager = await server.as('operations manager');
    const storekeeper = await server.as('storekeeper');
    const { body } = await storekeeper.get<{ id: string }>('/api/me');
    const path = `/api/people/${body.id}`;
    const person = { name: 'storekeeper', fullName: 'Demo storekeeper', roles: ['storekeeper'] };
    expect((await manager.change(path, 1, { ...person, disabled: true })).status).toBe(200);
    expect((await storekeeper.get('/api/me')).status).toBe(401);
    expect((await manager.change(path, 2, person)).status).toBe(200);
  });

  it('the last operations manager is neither taken out nor made something else', async () => {
    const manager = await server.as('operations manager');
    const { body } = await manager.get<{ id: string }>('/api/me');
    const path = `/api/people/${body.id}`;
    const person = {
      name: 'operations-manager',
      fullName: 'Demo operations manager',
      roles: ['operations manager'],
    };
    for (const change of [{ disabled: true }, { roles: ['pilot'] }]) {
      const refused = await manager.change<{ detail: string }>(path, 1, { ...person, ...change });
      expect([refused.status, refused.body.detail]).toEqual([
        409,
        expect.stringContaining('Make another one first'),
      ]);
    }
    expect((await manager.get('/api/me')).status).toBe(200);
    const second = { ...person, name: 'second', fullName: 'Second manager' };
    expect((await manager.make(`/api/people/${randomUUID()}`, second)).status).toBe(200);
    expect((await manager.change(path, 1, { ...person, disabled: true })).status).toBe(200);
    expect((await manager.get('/api/me')).status).toBe(401);
  });

  it('that nobody can let in any more are let in from the machine itself', async () => {
    const password = await server.app.get(PeopleService).letIn('operations-manager');
    const back = server.stranger();
    expect((await back.signIn('operations-manager', password!)).body).toMatchObject({
      mustChangePassword: true,
    });
    expect(await server.app.get(PeopleService).letIn('nobody')).toBeNull();
  });
});
