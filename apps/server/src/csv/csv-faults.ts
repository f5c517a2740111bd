import type { Fault } from '@drumline/contract';
import { Problem } from '../http/problem.js';
import type { Cells } from './csv-kind.js';
import type { Line } from './read-csv.js';

/** Columns that have another name in the file than in the document. */
const headingOf: Readonly<Record<string, string>> = {
  openedOn: 'openedAt',
  'whenSoft.takeoffLessLb': 'softTakeoffLessLb',
  'whenSoft.landingLessLb': 'softLandingLessLb',
};

export const atLine = (line: number, fault: Fault): Fault => ({
  ...fault,
  path: fault.path === '' ? `line ${line}` : `line ${line}, ${headingOf[fault.path] ?? fault.path}`,
});

/** A fault of the fourth thing, `[3].hours`, at the line that it came from. */
export const byLine = (fault: Fault, lines: readonly Line<unknown>[]): Fault => {
  const [own, place, field] = /^\[(\d+)\]\.?(.*)$/.exec(fault.path) ?? [];
  return own === undefined ? fault : atLine(lines[Number(place)]!.line, { ...fault, path: field! });
};

/** Lines about what an earlier line is about already. Null: about nothing that has a name. */
export const sameTwice = <Thing>(
  lines: readonly Line<Thing>[],
  nameOf: (thing: Thing, cells: Cells) => string | null,
): readonly Fault[] => {
  const first = new Map<string, number>();
  return lines.flatMap(({ line, thing, cells }) => {
    const name = nameOf(thing, cells);
    if (name === null) return [];
    const earlier = first.get(name);
    if (earlier === undefined) first.set(name, line);
    if (earlier === undefined) return [];
    const problem = `${name} stands in line ${earlier} already.`;
    return [atLine(line, { path: '', problem, remedy: 'Leave one of the two.' })];
  });
};

/** All faults, in the order in which somebody goes through the file. */
export const refuseFaulty = (faults: readonly Fault[]): void => {
  if (faults.length === 0) return;
  const detail = 'The file has to be put right, and nothing of it was taken: see faults, by line.';
  const inOrder = [...faults].sort((one, other) => lineOf(one) - lineOf(other));
  throw new Problem('faults', detail, inOrder);
};

const lineOf = ({ path }: Fault): number => Number(/^line (\d+)/.exec(path)?.[1] ?? 0);
