import Dexie, { type EntityTable, liveQuery } from 'dexie';
import { useEffect, useState } from 'react';

/** One request of an entry, made ready at Keep: it is sent as it stands, however often. */
export interface KeptRequest {
  /** With the id that the phone has made: `/api/movements/<uuid>`. Nothing else has the same path. */
  readonly path: string;
  readonly body: object;
}

/** What a person has reported with one press. Appended, never changed; a correction is another entry. */
export interface Entry {
  /** Order in which the entries were kept. */
  readonly seq: number;
  /** "3 left at XGAN, 1 brought back". */
  readonly words: string;
  readonly flight: string | null;
  readonly requests: readonly KeptRequest[];
  /** Its author, whoever is signed in by the time there is a line. */
  readonly by: string;
  readonly clock: KeptClock;
}

/** The clock at Keep: what the phone showed, and by how much it was known to be off. */
export interface KeptClock {
  /** By the phone's own clock. */
  readonly phoneAt: string;
  /** By the territory's clock, as the phone could tell: this is what is sent. */
  readonly at: string;
  /** The server's clock less the phone's, ms, when they last met; null: never yet. */
  readonly serverAheadMs: number | null;
}

/** What base said to one request. */
export interface BaseAnswer {
  readonly path: string;
  /** `asks`: base has read it and did not take it; somebody has to speak with base. */
  readonly outcome: 'with base' | 'asks';
  /** Territory's time. */
  readonly at: string;
  /** What base has to say about it, in its words; empty: nothing. */
  readonly says: readonly string[];
}

/** The last answer to a read, kept for when there is no line. */
export interface KeptRead {
  readonly path: string;
  readonly body: unknown;
  /** Territory's time. */
  readonly at: string;
}

/** Small facts of this phone, by name: who it belongs to, what a person has opened. */
export interface KeptFact {
  readonly name: string;
  readonly value: unknown;
}

interface Tables {
  readonly entries: EntityTable<Entry, 'seq'>;
  readonly answers: EntityTable<BaseAnswer, 'path'>;
  readonly reads: EntityTable<KeptRead, 'path'>;
  readonly facts: EntityTable<KeptFact, 'name'>;
}

/** Everything that the phone keeps, in the browser's own database. */
export const kept = new Dexie('drumline-phone') as Dexie & Tables;
kept.version(1).stores({ entries: '++seq', answers: 'path', reads: 'path', facts: 'name' });

/**
 * What a query gives now, and again whenever what it reads has changed, in another window too; undefined: not read yet.
 * The query has to be the same function at every drawing.
 */
export const useKept = <T>(query: () => Promise<T>): T | undefined => {
  const [shown, setShown] = useState<T>();
  useEffect(() => {
    const reading = liveQuery(query).subscribe({ next: (value) => setShown(value) });
    return () => reading.unsubscribe();
  }, [query]);
  return shown;
};

export const fact = async <T>(name: string): Promise<T | undefined> =>
  (await kept.facts.get(name))?.value as T | undefined;

export const keepFact = async (name: string, value: unknown): Promise<void> => {
  await kept.facts.put({ name, value });
};
