import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));
const program = fileURLToPath(new URL('../../apps/cli/bin/drumline.js', import.meta.url));

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Starts the built program as a user would, in the repository's folder. */
export function start(...words: string[]): { readonly child: ChildProcess; readonly ended: Promise<Ended> } {
  const child = spawn(process.execPath, [program, ...words], { cwd: root });
  let out = '';
  let err = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    out += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    err += text;
  });
  const ended = new Promise<Ended>((resolve) => {
    child.on('close', (code) => resolve({ code, out, err }));
  });
  return { child, ended };
}

export const run = (...words: string[]): Promise<Ended> => start(...words).ended;

/** Runs the program with this text on its standard input. */
export function runWith(input: string, ...words: string[]): Promise<Ended> {
  const { child, ended } = start(...words);
  child.stdin?.end(input);
  return ended;
}

/** Resolves as soon as the program has written such a text to standard error. */
export function hasSaid(child: ChildProcess, text: string): Promise<void> {
  return new Promise((resolve) => {
    let said = '';
    child.stderr?.on('data', (part: string) => {
      said += part;
      if (said.includes(text)) resolve();
    });
  });
}
