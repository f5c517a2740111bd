import { type ChildProcess, fork } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Scenario } from '@drumline/planning';
import type { FromChild, SolveOptions, SolveOutcome, SolveProgress, ToChild } from './solve-messages.js';

interface Solve {
  readonly scenario: Scenario;
  readonly options: SolveOptions;
  readonly signal: AbortSignal;
  readonly onProgress: (progress: SolveProgress) => void;
}

/** After its time limit the child has this long to hand in what it has. */
const graceMs = 20_000;
/** After a cancel it is ended after this long, whatever it does. */
const cancelMs = 2_000;

/**
 * Solves in a process of its own: the solver blocks its event loop for the whole solve, and a job that blocks past
 * its lock would be started twice. Never rejects for what the child does: that is an outcome.
 */
export const runSolve = ({ scenario, options, signal, onProgress }: Solve): Promise<SolveOutcome> =>
  new Promise((resolve) => {
    const child = forkChild();
    let outcome: SolveOutcome | undefined;
    const late = setTimeout(() => child.kill('SIGKILL'), options.seconds * 1000 + graceMs);
    const cancel = (): void => {
      if (child.connected) send(child, { kind: 'cancel' });
      setTimeout(() => child.kill('SIGKILL'), cancelMs).unref();
    };
    signal.addEventListener('abort', cancel, { once: true });
    child.on('message', (message: FromChild) => {
      if (message.kind === 'progress') onProgress(message.progress);
      if (message.kind === 'outcome') outcome = message.outcome;
    });
    child.on('error', (error) => {
      outcome ??= { status: 'failed', error: error.message };
    });
    child.on('close', (code, killedBy) => {
      clearTimeout(late);
      signal.removeEventListener('abort', cancel);
      if (signal.aborted) resolve({ status: 'cancelled' });
      else
        resolve(
          outcome ?? { status: 'failed', error: `The solver ended early (${killedBy ?? `code ${code}`}).` },
        );
    });
    send(child, { kind: 'solve', scenario, options });
    if (signal.aborted) cancel();
  });

/** Rejects where the child cannot be started or does not answer. A sound answer is good for ten minutes. */
export const isSolverSound = async (): Promise<void> => {
  if (Date.now() - lastSound < 10 * 60_000) return;
  await new Promise<void>((resolve, reject) => {
    const child = forkChild();
    child.on('message', () => resolve());
    child.on('error', reject);
    child.on('close', (code) => reject(new Error(`the solver child ended with code ${code}`)));
    send(child, { kind: 'are you there' });
  });
  lastSound = Date.now();
};

let lastSound = Number.NEGATIVE_INFINITY;

const send = (child: ChildProcess, message: ToChild): void => {
  child.send(message, () => {}); // a child that is gone is reported by 'close'
};

// Tests run from source, and a child has no loader for it: they use the built file.
const forkChild = (): ChildProcess => {
  const beside = fileURLToPath(new URL('../solve.child.js', import.meta.url));
  const built = fileURLToPath(new URL('../../dist/solve.child.js', import.meta.url));
  return fork(existsSync(beside) ? beside : built, {
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
    execArgv: [],
  });
};
