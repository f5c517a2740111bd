import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Scenario } from '@drumline/planning';
import { beforeAll, describe, expect, it } from 'vitest';
import { rootFolder } from '../config.js';
import { runSolve } from './run-solve.js';
import type { SolveProgress } from './solve-messages.js';

let scenario: Scenario;
beforeAll(async () => {
  scenario = JSON.parse(await readFile(join(rootFolder, 'seeds', 'hollowtarn.json'), 'utf8')) as Scenario;
});

const solve = (seconds: number, onProgress: (progress: SolveProgress) => void, finish?: AbortSignal) =>
  runSolve({
    scenario,
    options: {
      endTarget: 'operator',
      seed: 1,
      budget: { seconds },
      weather: { fortnights: 100, seed: 1 },
    },
    cancel: new AbortController().signal,
    ...(finish && { finish }),
    atMostSeconds: 120,
    onProgress,
  });

describe('a plan that is being made', () => {
  it('is told of at least once a second from the start to the end, by the solver’s own clock', async () => {
    const told: SolveProgress[] = [];
    expect((await solve(6, (progress) => told.push(progress))).status).toBe('solved');
    const at = told.map(({ seconds }) => seconds);
    expect(at).toEqual([...at].sort((one, other) => one - other));
    for (const { seconds, figuresFrom } of told) expect(figuresFrom).toBeLessThanOrEqual(seconds);
    expect(told.length).toBeGreaterThanOrEqual(Math.floor(at.at(-1)!));
    expect(told.at(-1)!.stage).toBe('steadying and checking');
    expect(told.at(-1)!.best).toBeGreaterThan(0);
  }, 120_000);

  it('hands in the best checked plan when it is told to finish, long before its time', async () => {
    const finish = new AbortController();
    const onProgress = ({ stage }: SolveProgress) => {
      if (stage === 'search') finish.abort();
    };
    const outcome = await solve(600, onProgress, finish.signal);
    if (outcome.status !== 'solved') throw new Error(`expected a plan, not ${JSON.stringify(outcome)}`);
    expect(outcome.plan.flights.length).toBeGreaterThan(5);
  }, 120_000);
});
