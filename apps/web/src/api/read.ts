import { type QueryClient, useQueries, useQuery } from '@tanstack/react-query';
import { z } from 'zod';
import { type ApiProblem, asProblem } from './problem.js';
import { parseAnswer, send } from './send.js';

/** What a page sees of the server. The last picture stays: `value` is there with `problem` after a failed re-read. */
export interface Read<T> {
  readonly value: T | undefined;
  /** When `value` was read, by this machine's clock. */
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

const readOf = <T>({ data, error, dataUpdatedAt, isFetching, refetch }: Known<T>): Read<T> => ({
  value: data,
  readAt: dataUpdatedAt === 0 ? undefined : new Date(dataUpdatedAt),
  problem: error === null ? undefined : asProblem(error),
  isChecking: isFetching,
  again: () => void refetch(),
});

/** Once, inside an act that has to know how a thing stands; pages use useRead. */
export const readOnce = async <T>(path: string, schema: z.ZodType<T>): Promise<T> =>
  parseAnswer(schema, path, (await send('GET', path)).body);

/**
 * Reads a path, and reads it again when /api/changes says that something it shows has changed (see watched.ts).
 * `null` for a path: nothing to read yet.
 */
export const useRead = <T>(path: string | null, schema: z.ZodType<T>): Read<T> =>
  readOf(
    useQuery({
      queryKey: [path],
      queryFn: () => readOnce(path!, schema),
      enabled: path !== null,
    }),
  );

/** As useRead, for a list that the server hands out in pages: all of them, as one. */
export const useList = <T>(path: string | null, item: z.ZodType<T>): Read<readonly T[]> =>
  readOf(
    useQuery({
      queryKey: [path, 'all pages'],
      queryFn: () => readAllPages(path!, item),
      enabled: path !== null,
    }),
  );

/** Several things of one kind at once, in the order of their paths. */
export const useReads = <T>(paths: readonly string[], schema: z.ZodType<T>): readonly Read<T>[] =>
  useQueries({
    queries: paths.map((path) => ({ queryKey: [path], queryFn: () => readOnce(path, schema) })),
  }).map(readOf);

const readAllPages = async <T>(path: string, item: z.ZodType<T>): Promise<readonly T[]> => {
  const page = z.object({ items: z.array(item), next: z.string().nullable() });
  const all: T[] = [];
  for (let next: string | null = ''; next !== null; ) {
    const url = new URL(path, window.location.origin);
    url.searchParams.set('limit', '500');
    if (next !== '') url.searchParams.set('after', next);
    const read: z.output<typeof page> = await readOnce(url.pathname + url.search, page);
    all.push(...read.items);
    next = read.next;
  }
  return all;
};

/** Reads again now: after an act of one's own, without waiting for the next question about changes. */
export const readAgain = (reads: QueryClient, ...beginnings: readonly string[]): Promise<void> =>
  reads.invalidateQueries({
    predicate: ({ queryKey: [path] }) => beginnings.some((beginning) => String(path).startsWith(beginning)),
  });
