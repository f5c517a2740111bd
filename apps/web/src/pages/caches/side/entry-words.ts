import { inWords } from '../../../ui/index.js';
import type { Entered } from './case-read.js';

const verbs: Readonly<Record<string, string>> = {
  received: 'received',
  filled: 'filled',
  loaded: 'loaded',
  'left at': 'left here',
  'brought home': 'brought home',
  opened: 'opened',
  drawn: 'drawn',
  dipped: 'dipped',
  emptied: 'emptied',
  slung: 'slung',
  spilled: 'spilled',
  lost: 'not found',
  found: 'found',
  transferred: 'transferred',
};

/** "150 L drawn from 0447 into H1 for P1" of an entry of the ledger. */
export const entryWords = ({ kind, drum, millilitres, into, programme, flight, from, to }: Entered): string =>
  [
    ...(kind === 'drawn' || kind === 'spilled' ? [inWords((millilitres ?? 0) / 1000, 'L')] : []),
    verbs[kind] ?? kind,
    ...(drum === undefined ? [] : [kind === 'drawn' ? `from ${drum}` : drum]),
    ...(into === undefined ? [] : [`into ${into}`]),
    ...(programme === undefined ? [] : [`for ${programme}`]),
    ...(flight === undefined ? [] : [`on ${flight}`]),
    ...(from === undefined || to === undefined ? [] : [`${from} to ${to}`]),
  ].join(' ');

/** Entries of one kind, person and minute on one line: the opening of a ledger is dozens. */
export interface EntryLine {
  readonly at: string;
  readonly by: string;
  readonly means: string;
  readonly words: string;
  readonly count: number;
}

export const entryLines = (entries: readonly Entered[]): readonly EntryLine[] => {
  const lines = new Map<string, Entered[]>();
  for (const entry of entries) {
    const key =
      entry.kind === 'drawn' ? entry.id : `${entry.kind} ${entry.by} ${entry.happenedAt.slice(0, 16)}`;
    lines.set(key, [...(lines.get(key) ?? []), entry]);
  }
  return [...lines.values()].map((same) => {
    const { happenedAt: at, by, means, kind } = same[0]!;
    const words =
      same.length === 1 ? entryWords(same[0]!) : `${inWords(same.length, 'drums')} ${verbs[kind] ?? kind}`;
    return { at, by, means, words, count: same.length };
  });
};
