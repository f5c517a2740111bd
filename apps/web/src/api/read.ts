import {
  type QueryClient,
  type QueryFunctionContext,
  type UseQueryResult,
  useQueries,
  useQuery,
} from '@tanstack/react-query';
import { useEffect, useMemo, useRef } from 'react';
import { z } from 'zod';
import { forgetPicture, keepPicture, keptPicture } from './kept-pictures.js';
import { type ApiProblem, asProblem } from './problem.js';
import { parseAnswer, send, serverAhead } from './send.js';

/** What a page sees of the server. The last picture stays: `value` is there with `problem` after a failed re-read. */
export interface Read<T> {
  readonly value: T | undefined;
  /** When `value` was read, by the server's clock. */
  readonly readAt: Date | undefined;
  readonly problem: ApiProblem | undefined;
  readonly isChecking: boolean;
  /** Reads it again, now. */
  readonly again: () => void;
}

interface Known<T> {
  readonly data: T | undefined;
  readonly error: Error | null;
  readonly dataUpdatedAt: number;
  readonly isFetching: boolean;
  readonly refetch: () => Promise<unknown>;
}

const readOf = <T>({ data, error, dataUpdatedAt, isFetching, refetch }: Known<T>): Read<T> => {
  const problem = error === null ? undefined : asProblem(error);
  return {
    // What is not there any more has no last picture: a demo that was taken out has no title.
    value: problem?.kind === 'not-found' || problem?.kind === 'not-set-up' ? undefined : data,
    readAt: dataUpdatedAt === 0 ? undefined : new Date(dataUpdatedAt + serverAhead.get()),
    problem,
    isChecking: isFetching,
    again: () => void refetch(),
  };
};

/** Once, inside an act that has to know how a thing stands; pages use useRead. */
const readOnce = async <T>(path: string, schema: z.ZodType<T>): Promise<T> =>
  parseAnswer(schema, path, (await send('GET', path)).body);

/**
 * Reads a path, and reads it again when /api/changes says that something it shows has changed (see watched.ts).
 * `null` for a path: nothing to read yet. What is kept is the answer as it came: pages that share a path each read it by
 * their own schema.
 */
export const useRead = <T>(path: string | null, schema: z.ZodType<T>): Read<T> =>
  readOf(
    useQuery({
      queryKey: [path],
      queryFn: lastPictureStays(() => rawAnswer(path!)),
      select: useMemo(() => (raw: unknown) => parseAnswer(schema, path!, raw), [schema, path]),
      enabled: path !== null,
    }),
  );

/** As useRead, for a list that the server hands out in pages: all of them, as one. */
export const useList = <T>(path: string | null, item: z.ZodType<T>): Read<readonly T[]> =>
  readOf(
    useQuery({
      queryKey: [path, 'all pages'],
      queryFn: lastPictureStays(() => rawPages(path!)),
      select: useMemo(() => (raw: unknown) => parseAnswer(z.array(item), path!, raw), [item, path]),
      enabled: path !== null,
    }),
  );

/** Several things of one kind at once, in the order of their paths. */
export const useReads = <T>(paths: readonly string[], schema: z.ZodType<T>): readonly Read<T>[] =>
  useQueries({
    queries: paths.map((path) => ({
      queryKey: [path],
      queryFn: lastPictureStays(() => rawAnswer(path)),
      select: (raw: unknown) => parseAnswer(schema, path, raw),
    })),
  })
    // The library's type for a list of queries cannot carry a T that is open.
    .map((one) => readOf(one as UseQueryResult<T>));

/** A page that is opened while base does not answer shows what this person saw there last, and that it is of before. */
const lastPictureStays =
  (ask: () => Promise<unknown>) =>
  async ({ client, queryKey }: QueryFunctionContext): Promise<unknown> => {
    try {
      const body = await ask();
      void keepPicture(queryKey, body);
      return body;
    } catch (error) {
      if (!asProblem(error).isSilence) void forgetPicture(queryKey);
      else if (client.getQueryData(queryKey) === undefined) {
        const kept = await keptPicture(queryKey);
        if (kept !== undefined) client.setQueryData(queryKey, kept.body, { updatedAt: kept.readAt });
      }
      throw error;
    }
  };

const rawAnswer = async (path: string): Promise<unknown> => (await send('GET', path)).body;

const rawPage = z.object({ items: z.array(z.unknown()), next: z.string().nullable() });

const rawPages = async (path: string): Promise<readonly unknown[]> => {
  const all: unknown[] = [];
  for (let next: string | null = ''; next !== null; ) {
    const url = new URL(path, window.location.origin);
    url.searchParams.set('limit', '500');
    if (next !== '') url.searchParams.set('after', next);
    const read: z.output<typeof rawPage> = await readOnce(url.pathname + url.search, rawPage);
    all.push(...read.items);
    next = read.next;
  }
  return all;
};

/** Another path is being read: the last picture stays until its answer is there. */
export const useLast = <T>(read: Read<T>): Read<T> => {
  const last = useRef<T>(undefined);
  useEffect(() => {
    if (read.value !== undefined) last.current = read.value;
  }, [read.value]);
  return { ...read, value: read.value ?? last.current };
};

/** Reads again now: after an act of one's own, without waiting for the next question about changes. */
export const readAgain = (reads: QueryClient, ...beginnings: readonly string[]): Promise<void> =>
  reads.invalidateQueries({
    predicate: ({ queryKey: [path] }) => beginnings.some((beginning) => String(path).startsWith(beginning)),
  });
