import { type QueryClient, useQueryClient } from '@tanstack/react-query';
import { useCallback, useState } from 'react';
import type { z } from 'zod';
import { checkChanges } from './changes.js';
import { type ApiProblem, asProblem } from './problem.js';
import { readAgain } from './read.js';
import { type Answer, type Method, parseAnswer, send } from './send.js';

interface More<T> {
  /** Version of the thing that was read; `new`: it must not be there yet. */
  readonly version?: number | 'new' | undefined;
  readonly schema?: z.ZodType<T>;
}

const write =
  (method: Method) =>
  async <T = unknown>(
    path: string,
    body?: unknown,
    { version, schema }: More<T> = {},
  ): Promise<Answer<T>> => {
    const answer = await send(method, path, body, { version });
    return {
      ...answer,
      body: schema === undefined ? (answer.body as T) : parseAnswer(schema, path, answer.body),
    };
  };

/** To be used inside an act: `useAct(() => post('/api/flights/F05/approve', {}, { version: 3 }))`. */
export const post = write('POST');
export const put = write('PUT');
export const remove = write('DELETE');

export interface Act<Given extends readonly unknown[], T> {
  /** Sends it. Undefined: it was refused, and `problem` says why. */
  readonly run: (...given: Given) => Promise<T | undefined>;
  readonly isSending: boolean;
  readonly problem: ApiProblem | undefined;
  /** Takes the problem off the page. */
  readonly clear: () => void;
}

/**
 * Something a person does. `work` sends it; afterwards the pages read again what has changed, at once.
 * `alsoRead`: beginnings of paths that no version in /api/changes stands for, such as `/api/people`.
 */
export const useAct = <Given extends readonly unknown[], T>(
  work: (...given: Given) => Promise<T>,
  ...alsoRead: readonly string[]
): Act<Given, T> => {
  const reads = useQueryClient();
  const [isSending, setSending] = useState(false);
  const [problem, setProblem] = useState<ApiProblem>();
  const run = async (...given: Given): Promise<T | undefined> => {
    setSending(true);
    setProblem(undefined);
    try {
      return await sendAndRead(reads, () => work(...given), alsoRead);
    } catch (error) {
      setProblem(asProblem(error));
      return undefined;
    } finally {
      setSending(false);
    }
  };
  return { run, isSending, problem, clear: useCallback(() => setProblem(undefined), []) };
};

/**
 * Sends what outlives the part of the page that it was pressed on; as with an act, the pages read again what has changed.
 * Throws an ApiProblem where it is refused.
 */
export const useSender = (): (<T>(work: () => Promise<T>) => Promise<T>) => {
  const reads = useQueryClient();
  return useCallback((work) => sendAndRead(reads, work, []), [reads]);
};

const sendAndRead = async <T>(
  reads: QueryClient,
  work: () => Promise<T>,
  alsoRead: readonly string[],
): Promise<T> => {
  try {
    const done = await work();
    await checkChanges(reads);
    await readAgain(reads, ...alsoRead);
    return done;
  } catch (error) {
    const found = asProblem(error);
    // Somebody else was quicker: show what is there now.
    if (found.kind === 'stale-version' || found.kind === 'conflict') await checkChanges(reads);
    throw found;
  }
};

/** An id made here, so that sending the same thing twice is harmless. */
export const newId = (): string => crypto.randomUUID();
