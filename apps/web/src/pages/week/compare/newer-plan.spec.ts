import { describe, expect, it } from 'vitest';
import type { ListedPlan } from '../plan/plan-read.js';
import { newerPlan } from './newer-plan.js';
import { money } from './testing/soft-tuesday.js';

describe('a newer plan', () => {
  const plan = (id: string, rest: Partial<ListedPlan> = {}): ListedPlan => ({
    id,
    request: { endTarget: 'operator', seconds: 20 },
    state: 'solved',
    requestedByName: 'T. Orrin',
    asOf: '2027-06-15T06:53Z',
    secondsGone: 20,
    cancelAsked: false,
    progress: null,
    cost: money(1, 1, 1),
    moneyGap: null,
    acceptedByName: null,
    number: null,
    ...rest,
  });

  it('is the latest that was found or is being made after the one that is shown', () => {
    const failed = plan('4', { state: 'failed', cost: null });
    expect(newerPlan([failed, plan('3'), plan('2'), plan('1')], '2')?.id).toBe('3');
    expect(newerPlan([plan('3', { state: 'solving', cost: null }), plan('2')], '2')?.id).toBe('3');
    expect(newerPlan([failed, plan('2')], '2')).toBeUndefined();
  });

  it('is the latest of all where the one that is shown is too old to be listed', () => {
    expect(newerPlan([plan('30'), plan('29')], '2')?.id).toBe('30');
    expect(newerPlan([], '2')).toBeUndefined();
  });
});
