import type { KeptLine } from '../../../paper/kept-lines.js';
import type { LineEntry } from './sheet.js';

interface Kept {
  readonly text: string;
  readonly enteredAt: string;
  readonly enteredBy: string;
  /** An id that was never there. */
  readonly newId: () => string;
}

/** A line with the ids of everything it says, made once: sent again it is the same. */
export const keptLine = (entry: LineEntry, { text, enteredAt, enteredBy, newId }: Kept): KeptLine => {
  const { words, flight, happenedAt, writtenAt, by, means, wanted } = entry;
  return {
    id: newId(),
    ...{ text, words, flight, happenedAt, writtenAt, by, means, enteredAt, enteredBy },
    requests: wanted.map(({ to, body }) => ({
      path: `/api/${to}/${newId()}`,
      body: Array.isArray(body.drums)
        ? { ...body, drums: body.drums.map((drum: object) => ({ ...drum, movement: newId() })) }
        : body,
    })),
    answered: 0,
    state: 'kept',
    says: [],
  };
};

/** Another line that says the same of the same moment; undefined: none. */
export const sameLine = (entry: LineEntry, lines: readonly KeptLine[]): KeptLine | undefined =>
  lines.find(({ words, happenedAt }) => words === entry.words && happenedAt === entry.happenedAt);
