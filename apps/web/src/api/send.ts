import type { z } from 'zod';
import { keptBack } from './kept-back.js';
import { ApiProblem, outOfReach, problemOf } from './problem.js';
import { csrfToken, meSchema, session, sessionEnded, signedInAgain, signedInAs } from './session.js';
import { createStore, useStore } from './store.js';

export type Method = 'GET' | 'POST' | 'PUT' | 'DELETE';

export interface Answer<T = unknown> {
  readonly status: number;
  readonly body: T;
  /** Of the thing as it is now: what a change of it names. */
  readonly version: number | undefined;
  readonly etag: string | undefined;
}

/** `version`: what is changed was read at this version; `new`: it must not be there yet. */
export interface Precondition {
  readonly version?: number | 'new' | undefined;
  readonly unlessEtag?: string | undefined;
}

/** Difference of the server's clock and this machine's, ms. */
export const serverAhead = createStore(0);

/** What was sent and has no answer yet, the expired session included. */
const waiting = createStore(0);

/** With what a page keeps back for a moment. */
export const useEntriesWaiting = (): number => useStore(waiting) + (useStore(keptBack) === null ? 0 : 1);

/**
 * One request to the own server. A session that ended is not an error: the request waits until the person has signed in
 * again, and goes out once more.
 */
export const send = async (
  method: Method,
  path: string,
  body?: unknown,
  precondition: Precondition = {},
): Promise<Answer> => {
  const isEntry = method !== 'GET';
  if (isEntry) waiting.set(waiting.get() + 1);
  try {
    const once = () => sendOnce(method, path, body, precondition);
    // A wrong password is no ended session.
    return path === '/api/sign-in' ? await once() : await sendAgainWhenSignedIn(once);
  } finally {
    if (isEntry) waiting.set(waiting.get() - 1);
  }
};

const sendAgainWhenSignedIn = async (once: () => Promise<Answer>): Promise<Answer> => {
  try {
    return await once();
  } catch (error) {
    if (!(error instanceof ApiProblem)) throw error;
    if (error.kind === 'not-signed-in') {
      const wasIn = 'me' in session.get();
      sessionEnded();
      if (wasIn && (await signedInAgain())) return once();
    }
    if (error.kind === 'cross-site' && (await hasNewToken())) return once();
    throw error;
  }
};

/** Signed in again in another tab: this one has the old token. */
const hasNewToken = async (): Promise<boolean> => {
  const before = csrfToken();
  const { body } = await sendOnce('GET', '/api/me', undefined, {});
  signedInAs(meSchema.parse(body));
  return csrfToken() !== before;
};

const sendOnce = async (
  method: Method,
  path: string,
  body: unknown,
  precondition: Precondition,
): Promise<Answer> => {
  const asked = method === 'GET' ? 'read' : 'entry';
  const answer = await fetch(path, {
    method,
    headers: headersOf(method, body, precondition),
    ...(body === undefined ? {} : { body: typeof body === 'string' ? body : JSON.stringify(body) }),
  }).catch(() => {
    throw outOfReach(asked);
  });
  const date = Date.parse(answer.headers.get('Date') ?? '');
  if (!Number.isNaN(date) && Math.abs(date - Date.now() - serverAhead.get()) > 2_000)
    serverAhead.set(date - Date.now());
  const text = answer.status === 304 ? '' : await answer.text();
  const isJson = /json/.test(answer.headers.get('Content-Type') ?? '');
  const read: unknown = isJson && text !== '' ? JSON.parse(text) : text;
  if (!answer.ok && answer.status !== 304) throw problemOf(answer.status, read, asked);
  const etag = answer.headers.get('ETag') ?? undefined;
  const version = /^"(\d+)"$/.exec(etag ?? '')?.[1];
  return {
    status: answer.status,
    body: read,
    etag,
    version: version === undefined ? undefined : Number(version),
  };
};

const headersOf = (method: Method, body: unknown, { version, unlessEtag }: Precondition) => ({
  ...(body === undefined
    ? {}
    : { 'Content-Type': typeof body === 'string' ? 'text/csv' : 'application/json' }),
  ...(method === 'GET' ? {} : { 'X-CSRF-Token': csrfToken() }),
  ...(typeof version === 'number' ? { 'If-Match': `"${version}"` } : {}),
  ...(version === 'new' ? { 'If-None-Match': '*' } : {}),
  ...(unlessEtag === undefined ? {} : { 'If-None-Match': unlessEtag }),
});

/** Reads an answer as what it must be. A server that answers otherwise is a fault of ours: said in full. */
export const parseAnswer = <T>(schema: z.ZodType<T>, path: string, body: unknown): T => {
  const read = schema.safeParse(body);
  if (read.success) return read.data;
  const [issue] = read.error.issues;
  throw new ApiProblem('unread', {
    what: `The answer of ${path.split('?')[0]} cannot be read`,
    why: `${issue?.path.join('.')}: ${issue?.message}.`,
    next: 'Load the page again; if it stays, tell set-up.',
  });
};
