import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startProgram } from '../../../apps/server/src/testing/start-program.js';

export const password = 'a password for tests';

interface Started {
  readonly url: string;
  readonly dataDir: string;
  /** What it has printed: the one-time password of a new installation. */
  readonly said: () => string;
  /** The program ends; its database stays. */
  readonly halt: () => Promise<void>;
  /** At the same address as before. */
  readonly startAgain: () => Promise<void>;
  readonly stop: () => Promise<void>;
}

/** What `npm start` runs, with a new database of its own and the demo in it; `DEMO: 'no'` for one without. */
export const startOffice = async (environment: Readonly<Record<string, string>> = {}): Promise<Started> => {
  const dataDir = await mkdtemp(join(tmpdir(), 'drumline-office-'));
  const start = (port: string) =>
    startProgram({
      DATA_DIR: dataDir,
      DEMO_PASSWORD: password,
      LOG_LEVEL: 'warn',
      PORT: port,
      ...environment,
    });
  let program = await start('0');
  const { url } = program;
  const halt = async (): Promise<void> => {
    program.process.kill('SIGTERM');
    await program.ended;
  };
  return {
    url,
    dataDir,
    said: () => program.said(),
    halt,
    startAgain: async () => {
      program = await start(new URL(url).port);
    },
    stop: async () => {
      await halt();
      await rm(dataDir, { recursive: true, force: true });
    },
  };
};
