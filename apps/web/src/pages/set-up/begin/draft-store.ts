import { useState } from 'react';
import { ApiProblem, createStore, useStore } from '../../../api/index.js';
import type { Keeper, KeptLine } from '../kept/kept.js';
import { nameless } from '../kept/kept.js';
import { faultsOfOne, nameIn, type Section } from '../sections.js';
import { type Draft, linesIn, withLine } from './draft.js';

/** Kept in this browser, so that a page left and opened again has what was filled in. */
const keptHere = (place: string) => {
  const read = (): Draft => {
    try {
      return JSON.parse(localStorage.getItem(place) ?? '{}') as Draft;
    } catch {
      return {};
    }
  };
  const store = createStore<Draft>(read());
  const keep = (next: Draft): void => {
    store.set(next);
    localStorage.setItem(place, JSON.stringify(next));
  };
  return { ...store, keep };
};

const draft = keptHere('drumline-territory-begun');

/** What stands in forms and was not saved: by step and thing, `places/new`. */
const unsaved = keptHere('drumline-territory-unsaved');

export const useDraft = (): Draft => useStore(draft);

/** It is brought in: nothing of it is begun any more. */
export const forgetDraft = (): void => {
  draft.keep({});
  unsaved.keep({});
};

const unsavedAt = (section: Section, line: KeptLine | null): string => `${section.name}/${line?.id ?? 'new'}`;

const keepUnsaved = (at: string, data: unknown): void => {
  const { [at]: _, ...others } = unsaved.get();
  unsaved.keep(data === undefined ? others : { ...others, [at]: data });
};

/** Where in a step something is typed that was not saved: the id of its thing, or `new`. */
export const useUnsaved = (): ((section: Section) => string | undefined) => {
  const all = Object.keys(useStore(unsaved));
  return ({ name }) => all.find((at) => at.startsWith(`${name}/`))?.slice(name.length + 1);
};

/** Things of one kind in the draft. Each is tried by itself; how they fit together is said in the list of what is missing. */
export const useDraftKeeper = (section: Section): Keeper => {
  const now = useDraft();
  const [problem, setProblem] = useState<ApiProblem>();
  const data = linesIn(now, section);
  const lines = data.map(
    (each, at): KeptLine => ({
      id: nameIn(section, each) ?? String(at + 1),
      data: each as KeptLine['data'],
    }),
  );
  const write = (line: KeptLine | null, value: unknown) =>
    draft.keep(withLine(now, section, { at: lines.findIndex(({ id }) => id === line?.id), data: value }));
  return {
    lines,
    problem,
    isSending: false,
    clear: () => setProblem(undefined),
    offered: (list) => namesIn(now, list),
    unsaved: {
      of: (line) => unsaved.get()[unsavedAt(section, line)],
      keep: (line, value) => keepUnsaved(unsavedAt(section, line), value),
    },
    save: async (value, line) => {
      const found = problemOf(
        section,
        value,
        lines.filter((other) => other.id !== line?.id),
      );
      setProblem(found);
      if (found !== undefined) return undefined;
      write(line, value);
      return 'saved';
    },
    takeOut: async (line) => {
      write(line, null);
      return 'saved';
    },
  };
};

const problemOf = (section: Section, data: unknown, others: readonly KeptLine[]): ApiProblem | undefined => {
  const faults = faultsOfOne(section, data);
  const words = { what: 'Some fields have to be put right', why: 'Nothing was saved.', next: '' };
  if (faults.length > 0) return new ApiProblem('faults', words, { status: 422, faults });
  const name = nameIn(section, data);
  if (section.named !== null && name === null) return nameless(section, data);
  if (!others.some(({ id }) => id === name)) return undefined;
  return new ApiProblem('faults', {
    what: 'Not saved',
    why: `${name} is there already.`,
    next: 'Use another name, or open that one.',
  });
};

const nameFields: Readonly<Record<string, string>> = {
  places: 'code',
  caches: 'place',
  bases: 'place',
  aircraft: 'tail',
  programmes: 'code',
};

const namesIn = (now: Draft, list: string): readonly string[] =>
  ((now[list] ?? []) as readonly Readonly<Record<string, unknown>>[]).map((line) =>
    String(line[nameFields[list] ?? 'id']),
  );
