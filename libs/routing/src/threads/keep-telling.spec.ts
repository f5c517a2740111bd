import { Worker } from 'node:worker_threads';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keepTelling, type ToldProgress } from './keep-telling.js';

const found = (best: number) => ({
  stage: 'search',
  seconds: 9,
  best,
  bestMoney: 80,
  bound: 90,
  gap: (best - 90) / best,
});

describe('a solver that is silent', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('is told of twice a second with its last figures, and from when they are', () => {
    const told: ToldProgress[] = [];
    const teller = keepTelling((progress) => told.push(progress), Date.now);
    vi.advanceTimersByTime(1100);
    teller.hear(found(100));
    vi.advanceTimersByTime(1600);
    teller.stop();
    vi.advanceTimersByTime(5000);
    expect(told.map(({ seconds, figuresFrom, best }) => [seconds, figuresFrom, best])).toEqual([
      [0.5, 0, Number.POSITIVE_INFINITY],
      [1, 0, Number.POSITIVE_INFINITY],
      [1.1, 1.1, 100],
      [1.6, 1.1, 100],
      [2.1, 1.1, 100],
      [2.6, 1.1, 100],
    ]);
    expect(told.map(({ stage }) => stage)).toEqual(['first plan', 'first plan', ...Array(4).fill('search')]);
  });

  it('that speaks by itself is not repeated', () => {
    const told: ToldProgress[] = [];
    const teller = keepTelling((progress) => told.push(progress), Date.now);
    for (let best = 109; best >= 100; best--) {
      vi.advanceTimersByTime(400);
      teller.hear(found(best));
    }
    teller.stop();
    expect(told.map(({ best }) => best)).toEqual([109, 108, 107, 106, 105, 104, 103, 102, 101, 100]);
  });
});

it('a thread that is blocked whole is told of all the same: it stays blocked until it has been, three times', async () => {
  const gate = new Int32Array(new SharedArrayBuffer(4));
  const blocked = 'Atomics.wait(require("worker_threads").workerData, 0, 0)';
  const worker = new Worker(blocked, { eval: true, workerData: gate });
  const ended = new Promise((resolve) => worker.on('exit', resolve));
  let times = 0;
  const teller = keepTelling(
    () => {
      if (++times < 3) return;
      Atomics.store(gate, 0, 1);
      Atomics.notify(gate, 0);
    },
    () => performance.now(),
  );
  expect(await ended).toBe(0);
  teller.stop();
  expect(times).toBeGreaterThanOrEqual(3);
});
