import type { FromChild, ToChild } from './plans/solve-messages.js';

// One solve, then the end. Imports planning and routing only: no Nest, no database.

const answer = (message: FromChild): Promise<void> =>
  new Promise((resolve) => {
    if (process.send === undefined) resolve();
    else process.send(message, undefined, undefined, () => resolve());
  });

const end = async (message: FromChild): Promise<void> => {
  await answer(message);
  process.disconnect();
};

process.on('message', (message: ToChild) => {
  switch (message.kind) {
    case 'are you there':
      void end({ kind: 'here' });
      break;
    case 'cancel':
      process.exit(0);
      break;
    case 'solve':
      void end({
        kind: 'outcome',
        outcome: { status: 'failed', error: 'The planner is not joined to the server yet.' },
      });
      break;
  }
});
// Whoever started this is gone: nobody wants the answer.
process.on('disconnect', () => process.exit(0));
