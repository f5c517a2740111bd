import { type Fault, parseScenario } from '@drumline/contract';
import { Problem } from '../http/problem.js';
import { assemble, type Thing, withEveryDay } from './assemble.js';
import type { Kind } from './kinds.js';

/** What was sent: the last lines of their list. Faults are shown by the path in the body, or in the one of several bodies. */
interface Sent {
  readonly kind: Kind;
  /** How many bodies; absent: it was one thing, not a list of one. */
  readonly several?: number;
}

/** Faults that the territory had before are not held against this change. */
export const refuseNewFaults = (before: readonly Thing[], after: readonly Thing[], sent: Sent): void => {
  const added = newOnes({ of: 'faults', ...sent }, before, after);
  if (added.length === 0) return;
  throw new Problem(
    'faults',
    `The territory would not fit together: see faults.`,
    added.map(inBody(after, sent)),
  );
};

export const newDoubts = (before: readonly Thing[], after: readonly Thing[], sent: Sent): readonly Fault[] =>
  newOnes({ of: 'doubts', ...sent }, before, after).map(inBody(after, sent));

interface Asked extends Pick<Sent, 'kind'> {
  readonly of: 'faults' | 'doubts';
}

const newOnes = (asked: Asked, before: readonly Thing[], after: readonly Thing[]): readonly Fault[] => {
  const found = foundIn(after, asked);
  if (found.length === 0) return [];
  const known = new Set(foundIn(before, asked).map(wordsOf));
  return found.filter((fault) => !known.has(wordsOf(fault)));
};

const inBody = (after: readonly Thing[], { kind, several }: Sent) => {
  const first = countOf(after, kind) - (several ?? 1);
  const own = new RegExp(`^${kind.list ?? kind.name}\\[(\\d+)\\]\\.?`);
  return (fault: Fault): Fault => {
    const place = Number(own.exec(fault.path)?.[1] ?? -1) - first;
    if (place < 0) return fault;
    const path = fault.path.replace(own, several === undefined ? '' : `[${place}].`).replace(/\.$/, '');
    return { ...fault, path };
  };
};

/** The hand plan keeps no news out of the territory; a line that is written anew has to fit. */
const foundIn = (things: readonly Thing[], { of, kind: { list } }: Asked): readonly Fault[] => {
  const document = withEveryDay(assemble(things, new Date()));
  const parsed = parseScenario(document, list === 'handPlan' ? 'document' : 'ledger');
  if (of === 'doubts') return parsed.doubts;
  return parsed.ok ? [] : parsed.faults;
};

const countOf = (things: readonly Thing[], kind: Kind) =>
  things.filter((thing) => thing.kind === kind.name).length;

const wordsOf = ({ path, problem }: Fault): string => `${path.replace(/\[\d+\]/g, '[]')} ${problem}`;
