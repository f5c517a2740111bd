import 'reflect-metadata';
import { closeApp } from './close-app.js';
import { createApp } from './create-app.js';
import { runEntry } from './entry.js';
import { fillFirst } from './first-content.js';
import { listen } from './listen.js';
import { openPlatform } from './open-platform.js';
import { requireDatabaseUrl } from './require-database-url.js';

// HTTP only, on a PostgreSQL server of one's own. The jobs are done by `worker`.
await runEntry(async (running) => {
  const platform = await openPlatform(running, requireDatabaseUrl(running.config));
  const app = await createApp(platform);
  running.onStop(() => closeApp(app));
  await fillFirst(app, platform);
  running.log.info('The API runs.', { address: await listen(app, running.config) });
});
