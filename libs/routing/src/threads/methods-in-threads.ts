import type { Methods } from '../index.js';
import { highsInThread } from './highs-in-thread.js';
import { searchInThreads } from './search-in-threads.js';

/** Bound, search and polish in worker threads, for one solve on so many cores. */
export const methodsInThreads = (threads: number): Methods => ({
  ...highsInThread(),
  search: searchInThreads(threads),
});
