import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** `npm start` as a process of its own, from the build. */
export interface Program {
  readonly url: string;
  readonly process: ChildProcess;
  /** Resolves with the exit code; null: it was killed. */
  readonly ended: Promise<number | null>;
  /** What it has printed so far. */
  readonly said: () => string;
}

const programFile = fileURLToPath(new URL('../../dist/start.js', import.meta.url));

export const startProgram = (
  environment: Readonly<Record<string, string>>,
  [command, ...given]: readonly [string, ...string[]] = [process.execPath, programFile],
): Promise<Program> =>
  new Promise((resolve, reject) => {
    const program = spawn(command, given, {
      env: { PATH: process.env.PATH ?? '', PORT: '0', ...environment },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const ended = new Promise<number | null>((end) => {
      program.on('exit', (code) => end(code));
    });
    let said = '';
    const listen = (text: Buffer): void => {
      said += text.toString();
      const url = /Drumline is at (\S+)/.exec(said)?.[1];
      if (url !== undefined) resolve({ url, process: program, ended, said: () => said });
    };
    program.stdout.on('data', listen);
    program.stderr.on('data', listen);
    void ended.then((code) => reject(new Error(`the program ended with ${code}:\n${said}`)));
  });
