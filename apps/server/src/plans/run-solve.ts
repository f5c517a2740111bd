import { type ChildProcess, fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { FlightPlan, Scenario } from '@drumline/planning';
import type { FromChild, SolveOptions, SolveOutcome, SolveProgress, ToChild } from './solve-messages.js';

interface Solve {
  readonly scenario: Scenario;
  readonly options: SolveOptions;
  /** Aborted: nobody wants the plan any more. */
  readonly cancel: AbortSignal;
  /** Aborted: the best plan so far is wanted now. */
  readonly finish?: AbortSignal;
  /** The child is ended after this time, whatever it does. */
  readonly atMostSeconds: number;
  readonly onProgress: (progress: SolveProgress) => void;
  /** A checked plan of a short search, while the long one goes on. */
  readonly onFirst?: (plan: FlightPlan) => void;
}

/**
 * Solves in a process of its own: the solver blocks its event loop for the whole solve, and a job that blocks past
 * its lock would be started twice. Never rejects for what the child does: that is an outcome.
 */
export const runSolve = ({ scenario, options, cancel, finish, atMostSeconds, onProgress, onFirst }: Solve) =>
  new Promise<SolveOutcome>((resolve) => {
    if (cancel.aborted) {
      resolve({ status: 'cancelled' });
      return;
    }
    const child = forkChild();
    let outcome: SolveOutcome | undefined;
    const kill = (): void => {
      child.kill('SIGKILL');
    };
    const late = setTimeout(kill, atMostSeconds * 1000);
    const hurry = (): void => send(child, { kind: 'finish' });
    cancel.addEventListener('abort', kill, { once: true });
    finish?.addEventListener('abort', hurry, { once: true });
    child.on('message', (message: FromChild) => {
      if (message.kind === 'progress') onProgress(message.progress);
      if (message.kind === 'first') onFirst?.(message.plan);
      if (message.kind === 'outcome') outcome = message.outcome;
    });
    child.on('error', (error) => {
      outcome ??= { status: 'failed', error: error.message };
    });
    child.on('close', (code, killedBy) => {
      clearTimeout(late);
      cancel.removeEventListener('abort', kill);
      finish?.removeEventListener('abort', hurry);
      const early = `The solver ended early (${killedBy ?? `code ${code}`}).`;
      resolve(cancel.aborted ? { status: 'cancelled' } : (outcome ?? { status: 'failed', error: early }));
    });
    send(child, { kind: 'solve', scenario, options });
  });

/** Rejects where the child cannot be started or does not answer. A sound answer is good for ten minutes. */
export const askSolver = async (): Promise<void> => {
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
  if (child.connected) child.send(message, () => {}); // a child that is gone is reported by 'close'
};

/** The child always runs from the build, also when this file is run from source. */
const childFile = fileURLToPath(new URL('../../dist/solve.child.js', import.meta.url));

const forkChild = (): ChildProcess =>
  fork(childFile, { stdio: ['ignore', 'inherit', 'inherit', 'ipc'], execArgv: [] });
