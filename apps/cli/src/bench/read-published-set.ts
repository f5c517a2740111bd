import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { OpenProblem } from '@drumline/routing';
import { CommandEnd, exitCodes } from '../exit-codes.js';

/** An instance of the published inventory-routing set, with what is known of it (in the set's own money). */
export interface PublishedInstance {
  readonly name: string;
  readonly problem: OpenProblem;
  /** Proven optimum; null: none is published. */
  readonly optimum: number | null;
  /** Best published value; null: no solution is published. */
  readonly bestKnown: number | null;
}

/** Whether a folder holds the set: `published.csv`, and .dat files in it or in its folder `instances`. */
export function isPublishedSet(folder: string): boolean {
  return existsSync(join(folder, 'published.csv')) && instanceNames(folder).length > 0;
}

/** Names of all instances of the set, in order. */
export function instanceNames(folder: string): string[] {
  return readdirSync(instanceFolder(folder))
    .filter((file) => file.endsWith('.dat'))
    .map((file) => file.slice(0, -'.dat'.length))
    .sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));
}

const instanceFolder = (folder: string): string =>
  existsSync(join(folder, 'instances')) ? join(folder, 'instances') : folder;

/** Reads instances by name. Ends the command where one is missing or is not in the set's format. */
export function readPublishedSet(folder: string, names: readonly string[]): PublishedInstance[] {
  const published = readPublished(join(folder, 'published.csv'));
  return names.map((name) => {
    const path = join(instanceFolder(folder), `${name}.dat`);
    if (!existsSync(path))
      throw new CommandEnd(
        exitCodes.badInput,
        `${path}: there is no such file. Name an instance of the set.`,
      );
    const known = published.get(name) ?? { optimum: null, bestKnown: null };
    return { name, problem: parseInstance(readFileSync(path, 'utf8'), path), ...known };
  });
}

/**
 * One instance: line 1 `nodes days capacity vehicles`, line 2 the base `id x y opening production holding`, then a line a
 * site `id x y opening maximum minimum demand holding`. Travel costs the distance rounded to a whole number.
 */
export function parseInstance(text: string, path: string): OpenProblem {
  const lines = text
    .trim()
    .split('\n')
    .map((line) => line.trim().split(/\s+/).map(Number));
  const [first, base, ...sites] = lines as [number[], number[], ...number[][]];
  const [nodes, days, capacity, vehicles] = first as [number, number, number, number];
  if (sites.length !== nodes - 1 || lines.flat().some(Number.isNaN))
    throw new CommandEnd(
      exitCodes.badInput,
      `${path}: line 1 names ${nodes} places, ${sites.length + 1} lines of figures follow. Give a file of the published set.`,
    );
  const daily = (units: number) => new Array<number>(days).fill(units);
  return {
    days,
    fleet: { vehicles, capacity },
    base: { opening: base[3]!, production: daily(base[4]!), holdingCost: cents(base[5]!) },
    sites: sites.map(([id, , , opening, maximum, minimum, demand, holding]) => ({
      id: String(id),
      opening: opening!,
      maximum: maximum!,
      minimum: minimum!,
      demand: daily(demand!),
      holdingCost: cents(holding!),
    })),
    travelCost: [base, ...sites].map((from) => [base, ...sites].map((to) => cents(distance(from, to)))),
  };
}

const cents = (money: number): number => Math.round(money * 100);

const distance = (from: number[], to: number[]): number =>
  Math.floor(Math.hypot(from[1]! - to[1]!, from[2]! - to[2]!) + 0.5);

function readPublished(path: string): Map<string, Pick<PublishedInstance, 'optimum' | 'bestKnown'>> {
  const [heads, ...rows] = readFileSync(path, 'utf8')
    .trim()
    .split('\n')
    .map((line) => line.trim().split(','));
  const figure = (row: readonly string[], head: string) => {
    const text = row[heads!.indexOf(head)];
    return text === undefined || text === '' ? null : Number(text);
  };
  return new Map(
    rows.map((row) => [
      row[0]!,
      { optimum: figure(row, 'proven_optimum'), bestKnown: figure(row, 'best_known') },
    ]),
  );
}
