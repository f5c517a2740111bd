import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { ApiProblem, keptBack } from '../../../api/index.js';
import { exampleFlight } from '../week-example.js';
import { forget, held, heldSeconds, holdBack, lastDone, sendNow, takeBack, wasSent } from './held-act.js';
import { opposingAct } from './opposing-act.js';

const flight = { id: 'F1', reason: 'Weather' };
const refuse = () =>
  Promise.reject(new ApiProblem('conflict', { what: 'F1 was not declined', why: '', next: '' }));

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal('window', { addEventListener: vi.fn(), removeEventListener: vi.fn() });
});
afterEach(() => {
  takeBack();
  forget();
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('an act that nothing takes back', () => {
  it('waits some seconds, counts among the entries that wait, and is sent then', async () => {
    const send = vi.fn(() => Promise.resolve());
    holdBack('Decline', flight, send);
    expect(held.get()).toMatchObject({ act: 'Decline', flight: 'F1' });
    expect(keptBack.get()).not.toBeNull();
    await vi.advanceTimersByTimeAsync((heldSeconds - 1) * 1000);
    expect(send).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(1000);
    expect(send).toHaveBeenCalledOnce();
    expect([lastDone.get()?.kind, keptBack.get()]).toEqual(['sent', null]);
  });

  it('is taken back within them: base never hears of it', async () => {
    const send = vi.fn(() => Promise.resolve());
    holdBack('Call off', flight, send);
    takeBack();
    await vi.advanceTimersByTimeAsync(60_000);
    expect(send).not.toHaveBeenCalled();
    expect(lastDone.get()).toMatchObject({ kind: 'taken back', act: 'Call off' });
  });

  it('is sent at once when the next one waits: two never wait together', async () => {
    const [first, second] = [vi.fn(refuse), vi.fn(() => Promise.resolve())];
    holdBack('Decline', flight, first);
    holdBack('Decline', { id: 'F2', reason: 'No pilot' }, second);
    expect(first).toHaveBeenCalledOnce();
    await vi.advanceTimersByTimeAsync(0);
    // The first is refused while the second waits: that one is neither lost nor sent early.
    expect(lastDone.get()).toMatchObject({ kind: 'refused', flight: 'F1', reason: 'Weather' });
    expect(held.get()?.flight).toBe('F2');
    expect(second).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(heldSeconds * 1000);
    expect(second).toHaveBeenCalledOnce();
    expect(lastDone.get()?.kind).toBe('refused');
  });

  it('refused, it stays to be read until it is seen', async () => {
    holdBack('Decline', flight, refuse);
    await sendNow();
    wasSent('Approve', 'F2');
    expect(lastDone.get()?.kind).toBe('refused');
    forget();
    expect(lastDone.get()).toBeNull();
  });
});

describe('an act that base has', () => {
  it('is taken back by another act, whose form opens', () => {
    expect(opposingAct('Approve', exampleFlight({ state: 'approved' })).opens).toBe('let go');
    expect(opposingAct('Give', exampleFlight({ state: 'given' })).opens).toBe('let go');
    expect(opposingAct('Amend', exampleFlight()).opens).toBe('amend');
    expect(opposingAct('Hold in place', exampleFlight({ heldInPlace: true })).words).toContain(
      'Free to move takes it back',
    );
  });

  it('that cannot be taken back any more says so', () => {
    expect(opposingAct('Approve', exampleFlight({ state: 'away' }))).toEqual({
      words: 'F1 was approved; base has it. It is away now, and no act takes that back. Re-plan from now.',
      opens: null,
    });
  });
});
