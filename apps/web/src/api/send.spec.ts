import { afterEach, describe, expect, it, vi } from 'vitest';
import { send } from './send.js';
import { type Me, session, sessionEnded, signedInAs } from './session.js';

const me: Me = {
  id: 'a',
  name: 'dispatcher',
  fullName: 'K. Aske',
  roles: ['dispatcher'],
  crew: null,
  programmes: [],
  mustChangePassword: false,
  may: [],
  csrfToken: 'first',
};

const problem = (kind: string, status: number) =>
  Response.json(
    { type: `urn:drumline:problem:${kind}`, title: kind, status, detail: 'Not now.' },
    { status },
  );

/** A server that gives these answers in turn, and the CSRF tokens it was sent. */
const answering = (...answers: readonly (() => Response)[]) => {
  const tokens: string[] = [];
  let at = 0;
  vi.stubGlobal('fetch', (_: string, { headers }: { headers: Record<string, string> }) => {
    tokens.push(headers['X-CSRF-Token'] ?? '');
    return Promise.resolve(answers[at++]!());
  });
  return tokens;
};

afterEach(() => {
  vi.unstubAllGlobals();
  session.set({ state: 'unknown' });
});

describe('an entry', () => {
  it('that meets an ended session waits for the person, and goes out once more with the new token', async () => {
    signedInAs(me);
    const tokens = answering(
      () => problem('not-signed-in', 401),
      () => Response.json({ id: 'F05' }, { headers: { ETag: '"4"' } }),
    );
    const sent = send('POST', '/api/flights/F05/approve', {}, { version: 3 });
    await vi.waitFor(() => expect(session.get().state).toBe('expired'));
    expect(tokens).toEqual(['first']);
    signedInAs({ ...me, csrfToken: 'second' });
    expect(await sent).toMatchObject({ body: { id: 'F05' }, version: 4 });
    expect(tokens).toEqual(['first', 'second']);
  });

  it('never goes out under the name of somebody else who signs in', async () => {
    const reload = vi.fn();
    vi.stubGlobal('window', { location: { reload } });
    signedInAs(me);
    sessionEnded();
    signedInAs({ ...me, id: 'b', name: 'storekeeper' });
    expect(reload).toHaveBeenCalledOnce();
    expect(session.get()).toMatchObject({ state: 'expired', me: { id: 'a' } });
  });

  it('with the token of an older session fetches the new one, and goes out once more', async () => {
    signedInAs(me);
    const tokens = answering(
      () => problem('cross-site', 403),
      () => Response.json({ ...me, csrfToken: 'second' }),
      () => Response.json({}),
    );
    await send('PUT', '/api/caches/XLOR', {});
    expect(tokens).toEqual(['first', '', 'second']);
  });

  it('that no server answers is refused as out of reach', async () => {
    signedInAs(me);
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('Failed to fetch')));
    await expect(send('POST', '/api/flights/F05/approve')).rejects.toMatchObject({ isOutOfReach: true });
  });
});

describe('a wrong password', () => {
  it('is said at once, also where a session has ended', async () => {
    signedInAs(me);
    sessionEnded();
    answering(() => problem('not-signed-in', 401));
    await expect(send('POST', '/api/sign-in', {})).rejects.toMatchObject({ kind: 'not-signed-in' });
  });
});
