import { useState } from 'react';
import { z } from 'zod';
import { ApiProblem, newId, put, remove, useAct, useReads, useSettings } from '../../../api/index.js';
import { faultsOfOne, nameIn, type Section, sectionAt } from '../sections.js';
import { askTouched, mayTouchFlights, touchedWords } from './touched-read.js';

export const lineSchema = z.object({
  id: z.string(),
  version: z.number(),
  changedAt: z.string(),
  changedBy: z.string().nullable(),
  data: z.record(z.string(), z.unknown()),
});

/** One thing as it is kept; without version, time and name where it is a draft of this page. */
export interface KeptLine {
  readonly id: string;
  readonly version?: number;
  readonly changedAt?: string;
  readonly changedBy?: string | null;
  readonly data: Readonly<Record<string, unknown>>;
}

export type Saved = 'saved' | 'waits for a second person';

/** Where things of one kind are kept: the server, or a draft on this page. */
export interface Keeper {
  readonly lines: readonly KeptLine[];
  /** `line`: what is changed; null: a new one. Undefined: refused, and `problem` says why. */
  readonly save: (data: unknown, line: KeptLine | null) => Promise<Saved | undefined>;
  readonly takeOut: (line: KeptLine) => Promise<Saved | undefined>;
  /** Which flights that stand a change touches, in words; empty: none, or not to be said. */
  readonly touched?: (data: unknown, line: KeptLine | null) => Promise<string>;
  readonly problem: ApiProblem | undefined;
  readonly isSending: boolean;
  readonly clear: () => void;
  readonly offered: (list: string) => readonly string[];
  /** Where what is typed stays though it was not saved and the form is left; `undefined` forgets it. */
  readonly unsaved?: {
    readonly of: (line: KeptLine | null) => unknown;
    readonly keep: (line: KeptLine | null, data: unknown) => void;
  };
}

/** Things of one kind on the server. */
export const useServerKeeper = (section: Section, lines: readonly KeptLine[]): Keeper => {
  // Made once for a new thing, so that a second press is the same thing.
  const [fresh, setFresh] = useState(newId);
  const offered = useOffered();
  const path = `/api/${section.name}`;
  const act = useAct(async (data: unknown, line: KeptLine | null): Promise<Saved> => {
    const id = line?.id ?? (section.named === null ? fresh : nameIn(section, data));
    if (id === null) throw nameless(section, data);
    const version = line?.version ?? 'new';
    const at = `${path}/${encodeURIComponent(id)}`;
    const { status } = await (data === null
      ? remove(at, undefined, { version })
      : put(at, data, { version }));
    setFresh(newId());
    return status === 202 ? 'waits for a second person' : 'saved';
  }, path);
  return {
    lines,
    save: (data, line) => act.run(data, line),
    takeOut: (line) => act.run(null, line),
    touched: (data, line) => touchedBy(section, data, line),
    problem: act.problem,
    isSending: act.isSending,
    clear: act.clear,
    offered,
  };
};

/** What is saved is saved, whether its flights could be asked for or not. */
const touchedBy = async (section: Section, data: unknown, line: KeptLine | null): Promise<string> => {
  if (!mayTouchFlights(section.name) || faultsOfOne(section, data).length > 0) return '';
  const id = line?.id ?? nameIn(section, data) ?? 'new';
  return askTouched({ kind: section.name, id, data }).then(touchedWords, () => '');
};

export const nameless = (section: Section, data: unknown): ApiProblem =>
  new ApiProblem(
    'faults',
    {
      what: 'Not saved',
      why: `A ${section.one} goes by its name, and it has none.`,
      next: 'Fill in what is marked.',
    },
    { status: 0, faults: faultsOfOne(section, data) },
  );

const lists = [
  'places',
  'caches',
  'bases',
  'aircraftTypes',
  'aircraft',
  'helicopters',
  'programmes',
  'batches',
] as const;

/** Names that fields may speak of, from the server. */
const useOffered = (): Keeper['offered'] => {
  const reads = useReads(
    lists.map((list) => `/api/${sectionAt(list).name}?limit=500`),
    z.object({ items: z.array(lineSchema) }),
  );
  const names = lists.map((list, at) => [list, (reads[at]?.value?.items ?? []).map(({ id }) => id)] as const);
  const known = new Map<string, readonly string[]>(names);
  return (list) => known.get(list) ?? [];
};

export const useCurrency = (): string => useSettings().value?.data.currency ?? 'cr';
