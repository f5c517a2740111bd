import { QueryClient } from '@tanstack/react-query';
import { asProblem } from './problem.js';

/** Kept until a version says otherwise; out of reach is tried again, a refusal is not. */
export const createReads = (): QueryClient =>
  new QueryClient({
    defaultOptions: {
      queries: {
        staleTime: Number.POSITIVE_INFINITY,
        gcTime: 30 * 60_000,
        refetchOnWindowFocus: false,
        refetchOnReconnect: false,
        networkMode: 'always',
        retry: (times, error) => times < 2 && asProblem(error).isOutOfReach,
        retryDelay: 1_500,
      },
    },
  });
