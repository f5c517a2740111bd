import { createStore, useStore } from '../api/index.js';

/** A line of a day sheet as it was kept on this machine: its requests carry their ids, and are sent as they stand. */
export interface KeptLine {
  readonly id: string;
  /** As it was typed. */
  readonly text: string;
  /** What it says. */
  readonly words: string;
  readonly flight: string | null;
  readonly happenedAt: string;
  readonly writtenAt: string;
  readonly by: string;
  readonly means: 'paper' | 'radio';
  readonly enteredAt: string;
  readonly enteredBy: string;
  readonly requests: readonly { readonly path: string; readonly body: object }[];
  /** How many of its requests base has. */
  readonly answered: number;
  /** `asks`: base has read it and says no. */
  readonly state: 'kept' | 'with base' | 'asks';
  /** What base says to it; empty: nothing. */
  readonly says: readonly string[];
}

const lines = createStore<readonly KeptLine[]>([]);
let person = '';

const place = (): string => `drumline.paper.${person}`;

/** The lines of one person, who alone sends them: what was kept before a reload or a restart is there again. */
export const openLines = (whose: string): void => {
  person = whose;
  lines.set(read().filter(({ state }) => state !== 'with base'));
};

export const linesNow = (): readonly KeptLine[] => lines.get();

export const useLines = (): readonly KeptLine[] => useStore(lines);

export const isWaiting = ({ state }: KeptLine): boolean => state !== 'with base';

/** False: this machine could not keep it. Another window may have kept some meanwhile: what is kept is read first. */
export const keepLine = (line: KeptLine): boolean =>
  write([...read().filter(({ id }) => id !== line.id), line]);

export const changeLine = (id: string, change: Partial<KeptLine>): void => {
  write(read().map((line) => (line.id === id ? { ...line, ...change } : line)));
};

/** Nothing of it is in the ledger. */
export const dropLine = (id: string): void => {
  write(read().filter((line) => line.id !== id));
};

const read = (): readonly KeptLine[] => {
  try {
    return JSON.parse(localStorage.getItem(place()) ?? '[]') as readonly KeptLine[];
  } catch {
    return [];
  }
};

const write = (next: readonly KeptLine[]): boolean => {
  try {
    localStorage.setItem(place(), JSON.stringify(next));
  } catch {
    return false;
  }
  lines.set(next);
  return true;
};
