import { useEffect } from 'react';
import { z } from 'zod';
import { ask, hasToken, readAs } from './ask.js';
import { kept } from './kept.js';
import { hasHeard, hasNotHeard, line, territoryNow } from './line.js';
import { waitingEntries } from './outbox.js';
import { sendOutbox } from './send-outbox.js';
import { askWho, sessionEnded, who } from './who.js';

/** Every answer that is kept for later says what time it is at base. */
const clocksSchema = z.object({ at: z.string(), serverAt: z.string(), timeZone: z.string() });

let paths: readonly string[] = [];

/** Paths that this person's pages read; they are kept whole. Asked for at once: the pages may come after the first round. */
export const readsOf = (wanted: readonly string[]): void => {
  if (paths.join() === wanted.join()) return;
  paths = wanted;
  void goRound();
};

let isOn = false;
let isWanted = false;

/** A round with base. Never two at once: what is asked for during one is another after it. */
export const goRound = async (): Promise<void> => {
  isWanted = true;
  if (isOn) return;
  isOn = true;
  try {
    while (isWanted) {
      isWanted = false;
      await alone(oneRound);
    }
  } finally {
    isOn = false;
  }
};

/** Who is here, what waits goes out, then what has changed comes in. */
const oneRound = async (): Promise<void> => {
  if (who.get().state !== 'here') return;
  if (!hasToken() && !(await askWho())) return;
  await sendOutbox();
  for (const path of paths) await readAndKeep(path);
};

/** Two windows on one phone take turns: the second finds everything done. */
const alone = async (work: () => Promise<void>): Promise<void> => {
  if (navigator.locks === undefined) return work();
  await navigator.locks.request('drumline-round', { ifAvailable: true }, async (lock) => {
    if (lock !== null) await work();
  });
};

const readAndKeep = async (path: string): Promise<void> => {
  const askedMs = Date.now();
  const said = await ask('GET', path);
  if (said.kind === 'signed out') sessionEnded();
  if (said.kind !== 'answer') return;
  const clocks = readAs(clocksSchema, said.body);
  if (clocks === null) return;
  // Half of the way there and back: nobody needs the phone's time to the second.
  const middleMs = (askedMs + Date.now()) / 2;
  hasHeard({
    territoryAheadMs: Date.parse(clocks.at) - middleMs,
    serverAheadMs: Date.parse(clocks.serverAt) - middleMs,
    timeZone: clocks.timeZone,
  });
  await kept.reads.put({ path, body: said.body, at: territoryNow().toISOString() });
};

const soonMs = 5_000;
const usualMs = 60_000;

/** Keeps hearing: soon while something waits, else by the minute; at once when the line or the page comes back. */
export const useRounds = (isHere: boolean): void => {
  useEffect(() => {
    if (!isHere) return;
    let isOver = false;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const go = async (): Promise<void> => {
      clearTimeout(timer);
      await goRound();
      const isSoon = (await waitingEntries()).length > 0 || !line.get().withBase;
      if (!isOver) timer = setTimeout(() => void go(), isSoon ? soonMs : usualMs);
    };
    const goNow = () => void go();
    goNow();
    window.addEventListener('online', goNow);
    // The browser knows before any request fails.
    window.addEventListener('offline', hasNotHeard);
    document.addEventListener('visibilitychange', goNow);
    return () => {
      isOver = true;
      clearTimeout(timer);
      window.removeEventListener('online', goNow);
      window.removeEventListener('offline', hasNotHeard);
      document.removeEventListener('visibilitychange', goNow);
    };
  }, [isHere]);
};
