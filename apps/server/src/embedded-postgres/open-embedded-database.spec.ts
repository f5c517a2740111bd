import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { ConfigError, readConfig } from '../config.js';
import { createLog } from '../log.js';
import { openKeptDatabase } from './open-embedded-database.js';

it('a program for a kept database makes none in an empty folder, and says where it looked', async () => {
  const dataDir = await mkdtemp(join(tmpdir(), 'drumline-kept-'));
  const running = {
    config: readConfig({ DATA_DIR: dataDir }),
    log: createLog('error'),
    onStop: () => {},
  };
  const opened = openKeptDatabase(running, 'to let anybody into');
  await expect(opened).rejects.toThrow(ConfigError);
  await expect(opened).rejects.toThrow(`There is no database in ${dataDir} to let anybody into.`);
  expect(existsSync(join(dataDir, 'postgres'))).toBe(false);
  await rm(dataDir, { recursive: true });
});
