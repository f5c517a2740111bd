import { createStore, useStore } from '../api/store.js';
import { type BaseAnswer, type Entry, type KeptClock, type KeptRequest, kept, useKept } from './kept.js';
import { line, territoryNow } from './line.js';

/** What is kept with one press: `requests` in the order in which base has to hear them. */
export interface Report {
  readonly words: string;
  readonly flight: string | null;
  readonly by: string;
  readonly clock: KeptClock;
  readonly requests: readonly KeptRequest[];
}

/** An entry as it stands now. */
export interface ShownEntry extends Entry {
  readonly state: 'kept' | 'sent' | 'with base' | 'asks';
  /** When base had all of it; null: not yet. */
  readonly withBaseAt: string | null;
  readonly says: readonly string[];
}

/** Entries that are handed to the network and have no answer: after a restart they are kept again. */
export const onTheWay = createStore<ReadonlySet<number>>(new Set());

/** The clock of something that is reported now. */
export const clockNow = (): KeptClock => ({
  phoneAt: new Date().toISOString(),
  at: territoryNow().toISOString(),
  serverAheadMs: line.get().heard?.serverAheadMs ?? null,
});

/**
 * Writes a report to the phone and reads it back. Null: it is kept, and goes out by itself. Otherwise what to write on
 * paper, as the phone could not keep it.
 */
export const keep = async (report: Report): Promise<string | null> => {
  try {
    const seq = await kept.entries.add(report);
    const back = await kept.entries.get(seq);
    if (back === undefined) throw new Error('not there');
    return null;
  } catch {
    return `Not kept. Write it on paper: ${report.words}, ${report.clock.at.slice(11, 16)} UTC.`;
  }
};

/** All of it, the oldest first. */
export const allEntries = async (): Promise<readonly (Entry & { answers: readonly BaseAnswer[] })[]> => {
  const [entries, answers] = await Promise.all([
    kept.entries.orderBy('seq').toArray(),
    kept.answers.toArray(),
  ]);
  const by = new Map(answers.map((answer) => [answer.path, answer]));
  return entries.map((entry) => ({
    ...entry,
    answers: entry.requests.flatMap(({ path }) => by.get(path) ?? []),
  }));
};

/** What base has not answered yet, the oldest first. */
export const waitingEntries = async () =>
  (await allEntries()).filter(({ answers, requests }) => answers.length < requests.length);

/** The newest first. Undefined: not read yet. */
export const useEntries = (): readonly ShownEntry[] | undefined => {
  const going = useStore(onTheWay);
  const entries = useKept(allEntries);
  return entries?.map(({ answers, ...entry }) => shown(entry, answers, going)).reverse();
};

export const isWaiting = ({ state }: ShownEntry): boolean => state === 'kept' || state === 'sent';

const shown = (entry: Entry, answers: readonly BaseAnswer[], going: ReadonlySet<number>): ShownEntry => {
  const isAnswered = answers.length === entry.requests.length;
  const asks = answers.some(({ outcome }) => outcome === 'asks');
  const open = going.has(entry.seq) ? 'sent' : 'kept';
  return {
    ...entry,
    state: !isAnswered ? open : asks ? 'asks' : 'with base',
    withBaseAt: isAnswered
      ? (answers
          .map(({ at }) => at)
          .toSorted()
          .at(-1) ?? null)
      : null,
    says: [...new Set(answers.flatMap(({ says }) => says))],
  };
};
