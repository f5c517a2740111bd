import { writeFile } from 'node:fs/promises';
import { errorFields } from './log.js';
import type { Platform } from './platform.module.js';

/**
 * Touches HEARTBEAT_FILE every ten seconds while the database and the queue answer: a worker has no address to ask
 * for its health, and its supervisor looks at the age of the file. Returns what stops it.
 */
export const keepHeartbeat = ({ config, database, queues, log }: Platform): (() => Promise<void>) => {
  const { heartbeatFile } = config;
  if (heartbeatFile === undefined) return async () => {};
  const beat = async (): Promise<void> => {
    try {
      await Promise.all([database.query('select 1'), queues.check()]);
      await writeFile(heartbeatFile, new Date().toISOString());
    } catch (error) {
      log.warn('No heartbeat: a part is down.', errorFields(error));
    }
  };
  void beat();
  const timer = setInterval(() => void beat(), 10_000);
  return async () => clearInterval(timer);
};
