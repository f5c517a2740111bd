import { z } from 'zod';
import { problemOf } from '../api/problem.js';
import { hasHeard, hasNotHeard } from './line.js';

/** What came of one request. */
export type Said =
  | { readonly kind: 'answer'; readonly body: unknown }
  /** Base has read it and says no. */
  | {
      readonly kind: 'refused';
      readonly status: number;
      readonly what: string;
      readonly words: string;
      readonly faults: readonly string[];
    }
  | { readonly kind: 'signed out' }
  /** This one could not be worked on; another may. */
  | { readonly kind: 'failed' }
  /** No line, or a server that is down. */
  | { readonly kind: 'no line' };

const tooLongMs = 20_000;

let csrfToken = '';

export const setToken = (token: string): void => {
  csrfToken = token;
};

export const hasToken = (): boolean => csrfToken !== '';

/** One request to base. It never throws: a phone without a line is nothing out of the ordinary. */
export const ask = async (method: 'GET' | 'PUT' | 'POST', path: string, body?: object): Promise<Said> => {
  const answer = await fetch(path, {
    method,
    cache: 'no-store',
    signal: AbortSignal.timeout(tooLongMs),
    headers: {
      // Base tells phones in the field from browsers of the office by it.
      'X-Drumline-Page': 'phone',
      ...(body === undefined ? {} : { 'Content-Type': 'application/json' }),
      ...(method === 'GET' ? {} : { 'X-CSRF-Token': csrfToken }),
    },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  }).catch(() => null);
  const text = await answer?.text().catch(() => null);
  if (answer === null || text === null || text === undefined || isDown(answer.status)) {
    hasNotHeard();
    return { kind: 'no line' };
  }
  hasHeard();
  if (answer.ok) return { kind: 'answer', body: readJson(text) };
  if (answer.status >= 500) return { kind: 'failed' };
  if (answer.status === 401) return { kind: 'signed out' };
  const problem = problemOf(answer.status, readJson(text));
  // The token of an older session: the next round fetches the new one.
  if (problem.kind === 'cross-site') {
    setToken('');
    return { kind: 'failed' };
  }
  const faults = problem.faults.map((fault) => `${fault.problem} ${fault.remedy}`);
  const words = [problem.why, problem.next, ...faults].filter((part) => part !== '').join(' ');
  return { kind: 'refused', status: answer.status, what: problem.what, words, faults };
};

/** Busy, or away: the same may be sent again later. */
const isDown = (status: number): boolean => [408, 429, 502, 503, 504].includes(status);

const readJson = (text: string): unknown => {
  try {
    return text === '' ? null : JSON.parse(text);
  } catch {
    return null;
  }
};

/** As much of an answer as the phone uses; null: not what it should be. */
export const readAs = <T>(schema: z.ZodType<T>, body: unknown): T | null => {
  const read = schema.safeParse(body);
  return read.success ? read.data : null;
};

export const raisedSchema = z.object({
  raised: z.array(z.object({ what: z.string() })).optional(),
  entered: z.boolean().optional(),
  report: z.object({ raised: z.array(z.string()) }).optional(),
});
