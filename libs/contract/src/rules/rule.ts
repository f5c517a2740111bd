import type { Scenario } from '@drumline/planning';
import { type Fault, printPath } from '../faults/fault.js';

export type ListField = {
  [K in keyof Required<Scenario>]: Required<Scenario>[K] extends readonly unknown[] ? K : never;
}[keyof Scenario];
export type Line<L extends ListField> = Required<Scenario>[L][number];

/** A document as far as its form is sound: fields without fault, and the sound lines of every list. */
export interface SoundParts {
  readonly whole: Partial<Scenario>;
  readonly lines: ReadonlyMap<string, readonly NumberedLine[]>;
}

/** A line of a list with its index in the document. */
export interface NumberedLine {
  readonly index: number;
  readonly value: unknown;
}

/** A check across the document. It says every fault it finds in the parts that are sound. */
export type Rule = (document: SoundParts) => Fault[];

/** A fault below the line under test: fields, then words. */
export type Finding = readonly [path: readonly PropertyKey[], problem: string, remedy: string];

/** A rule for each sound line of `list`; waits until the fields it `needs` have no fault of form. */
export const each =
  <L extends ListField, K extends keyof Scenario>(
    list: L,
    needs: readonly K[],
    check: (line: Line<L>, scenario: Pick<Scenario, K>) => Iterable<Finding>,
  ): Rule =>
  ({ whole, lines }) =>
    has(whole, needs)
      ? linesOf(lines, list).flatMap(({ index, value }) => faultsAt([list, index], check(value, whole)))
      : [];

/** A rule for the document; waits until the fields it `needs` have no fault of form. */
export const across =
  <K extends keyof Scenario>(
    needs: readonly K[],
    check: (scenario: Pick<Scenario, K>) => Iterable<Finding>,
  ): Rule =>
  ({ whole }) =>
    has(whole, needs) ? faultsAt([], check(whole)) : [];

/** No two lines of `list` go by the same name. */
export const unique =
  <L extends ListField>(list: L, what: string, nameOf: (line: Line<L>) => string): Rule =>
  ({ lines }) => {
    const first = new Map<string, number>();
    return linesOf(lines, list).flatMap(({ index, value }) => {
      const name = nameOf(value);
      const before = first.get(name);
      if (before === undefined) first.set(name, index);
      return before === undefined
        ? []
        : faultsAt(
            [list, index],
            [[[], `${what} ${name} stands already at ${list}[${before}].`, 'Keep one of them.']],
          );
    });
  };

const has = <K extends keyof Scenario>(
  whole: Partial<Scenario>,
  fields: readonly K[],
): whole is Pick<Scenario, K> => fields.every((field) => whole[field] !== undefined);

const linesOf = <L extends ListField>(lines: SoundParts['lines'], list: L) =>
  (lines.get(list) ?? []) as readonly { readonly index: number; readonly value: Line<L> }[];

const faultsAt = (start: readonly PropertyKey[], findings: Iterable<Finding>): Fault[] =>
  Array.from(findings, ([path, problem, remedy]) => ({
    path: printPath([...start, ...path]),
    problem,
    remedy,
  }));
