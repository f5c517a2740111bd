import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type PublishedRow, publishedLines } from './published-set.js';
import { instanceNames, isPublishedSet, parseInstance, readPublishedSet } from './read-published-set.js';

/** Three places, two days; tabs and a blank line at the end, as such files have them. */
const text =
  '3\t2\t40\t2\n0\t0.0\t0.0\t50\t30\t0.03\n1\t3.0\t4.0\t10\t30\t0\t10\t0.02\n2\t0.0\t-1.4\t5\t20\t0\t5\t0.05\n\n';

describe('reader of the published set', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'published-'));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  it('reads base, sites and whole distances, money in cents', () => {
    const problem = parseInstance(text, 'x.dat');
    expect(problem.fleet).toEqual({ vehicles: 2, capacity: 40 });
    expect(problem.base).toEqual({ opening: 50, production: [30, 30], holdingCost: 3 });
    expect(problem.sites[1]).toEqual({
      id: '2',
      opening: 5,
      maximum: 20,
      minimum: 0,
      demand: [5, 5],
      holdingCost: 5,
    });
    // 5, 1.4 and the root of 3^2 + 5.4^2 = 6.18, rounded.
    expect(problem.travelCost).toEqual([
      [0, 500, 100],
      [500, 0, 600],
      [100, 600, 0],
    ]);
  });

  it('a file with too few lines is said by its name', () => {
    expect(() => parseInstance('9 2 40 2\n0 0 0 50 30 0.03\n', 'short.dat')).toThrow(
      'short.dat: line 1 names 9 places',
    );
  });

  it('joins the published values; an instance without one has none', () => {
    expect(isPublishedSet(folder)).toBe(false);
    writeFileSync(join(folder, 'a10.dat'), text);
    writeFileSync(join(folder, 'a9.dat'), text);
    writeFileSync(join(folder, 'published.csv'), 'instance,proven_optimum,best_known\na9,,12.5\n');
    expect(isPublishedSet(folder)).toBe(true);
    expect(instanceNames(folder)).toEqual(['a9', 'a10']);
    const known = readPublishedSet(folder, ['a9', 'a10']).map(({ optimum, bestKnown }) => [
      optimum,
      bestKnown,
    ]);
    expect(known).toEqual([
      [null, 12.5],
      [null, null],
    ]);
    expect(() => readPublishedSet(folder, ['b'])).toThrow('there is no such file');
  });
});

describe('table of the published set', () => {
  it('prints what was reached, and the means by size', () => {
    const row: PublishedRow = {
      instance: 'S_abs1n5_2_L3',
      status: 'solved',
      value: 101,
      optimum: null,
      bestKnown: 100,
      gapPercent: 1,
      bound: 99,
      proven: false,
      seconds: 5.04,
      firstPlanSeconds: 0.1,
      gapPercentAt: [{ seconds: 5, gapPercent: 1.5 }],
    };
    const lines = publishedLines([row, { ...row, instance: 'S_abs1n5_3_L3', gapPercent: 0 }]);
    expect(lines[2]?.split(/\s+/)).toEqual([
      ...['S_abs1n5_2_L3', '101.00', '-', '100.00', '1.000', '5.0', '0.10', '1.500'],
    ]);
    expect(lines.at(-1)).toBe('Mean gap, all: 0.500 % (2)');
  });
});
