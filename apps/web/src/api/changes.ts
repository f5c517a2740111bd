import type { QueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { z } from 'zod';
import { lastAnswerAt, noteAnswer } from './last-answer.js';
import { ApiProblem } from './problem.js';
import { type Answer, send } from './send.js';
import { createStore, useStore } from './store.js';
import { kindsOf } from './watched.js';

/** Whether this page and the server hear each other, and since when not. */
export type Link =
  | { readonly state: 'with base'; readonly at: Date }
  | { readonly state: 'not with base'; readonly since: Date; readonly checking: boolean };

const link = createStore<Link>({ state: 'with base', at: lastAnswerAt() });

export const useLink = (): Link => useStore(link);

const versionsSchema = z.record(z.string(), z.string());
const everySeconds = 4;

let versions: Readonly<Record<string, string>> | undefined;
let etag: string | undefined;

/** Asks what has another version than before, and has only that read again. */
export const checkChanges = async (reads: QueryClient): Promise<void> => {
  const before = link.get();
  if (before.state === 'not with base') link.set({ ...before, checking: true });
  try {
    takeIn(reads, await send('GET', '/api/changes', undefined, { unlessEtag: etag }));
    const at = new Date();
    link.set({ state: 'with base', at });
    noteAnswer(at);
    if (before.state === 'not with base')
      await reads.invalidateQueries({ predicate: ({ state }) => state.error !== null });
  } catch (error) {
    if (error instanceof ApiProblem && error.isOutOfReach) {
      const since = before.state === 'not with base' ? before.since : before.at;
      link.set({ state: 'not with base', since, checking: false });
    }
    // Any other refusal is an answer: base is there.
  }
};

const takeIn = (reads: QueryClient, answer: Answer): void => {
  if (answer.status === 304) return;
  const now = versionsSchema.parse(answer.body);
  const before = versions;
  versions = now;
  etag = answer.etag;
  if (before === undefined) return;
  const changed = Object.keys(now).filter((kind) => now[kind] !== before[kind]);
  void reads.invalidateQueries({
    predicate: ({ queryKey }) => changed.some((kind) => shows(queryKey, kind)),
  });
  // A page that is not open shows its last picture where base falls silent: one of before the plan would say that there is none.
  if (acceptedPlan.every((kind) => changed.includes(kind)))
    void reads.refetchQueries({
      type: 'inactive',
      predicate: ({ queryKey }) => acceptedPlan.every((kind) => shows(queryKey, kind)),
    });
};

/** What accepting a plan changes; a run that goes on changes plans alone. */
const acceptedPlan = ['plans', 'flights'];

const shows = ([path]: readonly unknown[], kind: string): boolean => kindsOf(String(path)).includes(kind);

/** Keeps asking while the page can be seen; `isOn`: whether this person may ask at all. */
export const useChanges = (reads: QueryClient, isOn: boolean): void => {
  useEffect(() => {
    if (!isOn) return;
    let isOver = false;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const ask = async (): Promise<void> => {
      clearTimeout(timer);
      if (!document.hidden) await checkChanges(reads);
      if (!isOver) timer = setTimeout(() => void ask(), everySeconds * 1000);
    };
    const askNow = () => void ask();
    askNow();
    document.addEventListener('visibilitychange', askNow);
    window.addEventListener('online', askNow);
    return () => {
      isOver = true;
      clearTimeout(timer);
      document.removeEventListener('visibilitychange', askNow);
      window.removeEventListener('online', askNow);
    };
  }, [reads, isOn]);
};
