import 'reflect-metadata';
import { closeApp } from './close-app.js';
import { createApp } from './create-app.js';
import { openEmbeddedDatabase } from './embedded-postgres/open-embedded-database.js';
import { runEntry } from './entry.js';
import { fillFirst } from './first-content.js';
import { listen } from './listen.js';
import { openPlatform } from './open-platform.js';

// Everything in one go: database, migrations, queue, worker and API.
await runEntry(async (running) => {
  const { config, log, onStop } = running;
  const databaseUrl = config.databaseUrl ?? (await openEmbeddedDatabase(running));
  const platform = await openPlatform(running, databaseUrl);
  const app = await createApp(platform);
  onStop(() => closeApp(app));
  await fillFirst(app, platform);
  platform.queues.startWorkers();
  const address = await listen(app, config);
  log.info('Drumline runs.', { address });
  process.stdout.write(`\nDrumline is at ${address}\n\n`);
});
