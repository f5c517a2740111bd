import type { FlightPlan } from '@drumline/planning';
import type { DataSource } from 'typeorm';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createLog } from '../log.js';
import { PlanHeartbeat } from './plan-heartbeat.js';

const run = { id: 'the run', attempt: 1 };
const plan = { cost: { total: 1 } } as FlightPlan;

/** A database whose writes wait until they are let through, and what was written as the first plan. */
const slowDatabase = () => {
  const written: unknown[] = [];
  const waiting: ((failed?: Error) => void)[] = [];
  const query = (_: string, values: readonly unknown[]) =>
    new Promise((resolve, reject) => {
      written.push(values[3]);
      waiting.push((failed) =>
        failed === undefined ? resolve([[{ cancelled: false }], 1]) : reject(failed),
      );
    });
  return { database: { query } as unknown as DataSource, written, waiting };
};

const aBeat = () => vi.advanceTimersByTimeAsync(250);

describe('a first plan', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('that comes while a heartbeat is being written is written by the next one, and once', async () => {
    const { database, written, waiting } = slowDatabase();
    const beat = new PlanHeartbeat(
      database,
      run,
      createLog('error', () => {}),
    );
    await aBeat();
    beat.show(plan);
    waiting[0]?.();
    await aBeat();
    waiting[1]?.();
    await aBeat();
    waiting[2]?.();
    expect(written).toEqual([null, JSON.stringify(plan), null]);
    void beat.stop();
  });

  it('whose write failed is written by the next heartbeat', async () => {
    const { database, written, waiting } = slowDatabase();
    const beat = new PlanHeartbeat(
      database,
      run,
      createLog('error', () => {}),
    );
    beat.show(plan);
    await aBeat();
    waiting[0]?.(new Error('no connection'));
    await aBeat();
    expect(written).toEqual([JSON.stringify(plan), JSON.stringify(plan)]);
    void beat.stop();
  });
});
