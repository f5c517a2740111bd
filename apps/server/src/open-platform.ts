import { openDatabase } from './database/data-source.js';
import type { Running } from './entry.js';
import type { Platform } from './platform.module.js';
import { openQueues } from './queue/queues.js';

/** Opens the database, brought up to date, and the queues on it; both close when the program stops. */
export const openPlatform = async (
  { config, log, onStop }: Running,
  databaseUrl: string,
): Promise<Platform> => {
  const database = await openDatabase(databaseUrl);
  onStop(() => database.destroy());
  const queues = await openQueues({ databaseUrl, redisUrl: config.redisUrl }, log);
  onStop(() => queues.close());
  return { config, log, database, queues };
};
