import { planInThread } from '@drumline/planning/threads';
import type { FromChild, SolveOutcome, ToChild } from './plans/solve-messages.js';

// One solve, then the end. Imports the planner only: no Nest, no database. The plan is made in a thread, so that
// this one hears a request to finish while the solver blocks its own.

const stop = new Int32Array(new SharedArrayBuffer(4));

const answer = (message: FromChild): Promise<void> =>
  new Promise((resolve) => {
    if (process.send === undefined) resolve();
    else process.send(message, undefined, undefined, () => resolve());
  });

const solve = async ({ scenario, options }: Extract<ToChild, { kind: 'solve' }>): Promise<SolveOutcome> => {
  try {
    return await planInThread(
      { scenario, ...options, stop },
      (progress) => void answer({ kind: 'progress', progress }),
      (plan) => void answer({ kind: 'first', plan }),
    );
  } catch (error) {
    return { status: 'failed', error: error instanceof Error ? error.message : String(error) };
  }
};

const end = async (message: FromChild): Promise<void> => {
  await answer(message);
  process.disconnect();
};

process.on('message', (message: ToChild) => {
  switch (message.kind) {
    case 'are you there':
      void end({ kind: 'here' });
      break;
    case 'finish':
      Atomics.store(stop, 0, 1);
      break;
    case 'solve':
      void solve(message).then((outcome) => end({ kind: 'outcome', outcome }));
      break;
  }
});
// Also where whoever started this is gone: nobody wants the answer then.
process.on('disconnect', () => process.exit(0));
// A terminal's Ctrl-C is for the program that started this, which ends it in its own order.
process.on('SIGINT', () => {});
