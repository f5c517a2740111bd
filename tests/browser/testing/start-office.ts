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
  readonly stop: () => Promise<void>;
}

/** What `npm start` runs, with a new database of its own and the demo in it; `DEMO: 'no'` for one without. */
export const startOffice = async (environment: Readonly<Record<string, string>> = {}): Promise<Started> => {
  const dataDir = await mkdtemp(join(tmpdir(), 'drumline-office-'));
  const program = await startProgram({
    DATA_DIR: dataDir,
    DEMO_PASSWORD: password,
    LOG_LEVEL: 'warn',
    ...environment,
  });
  return {
    url: program.url,
    dataDir,
    said: program.said,
    stop: async () => {
      program.process.kill('SIGTERM');
      await program.ended;
      await rm(dataDir, { recursive: true, force: true });
    },
  };
};
