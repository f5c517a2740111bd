import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import { appOn } from './app.module.js';
import { runEntry } from './entry.js';
import { keepHeartbeat } from './heartbeat.js';
import { nestLogger } from './log.js';
import { openPlatform } from './open-platform.js';
import { requireDatabaseUrl } from './require-database-url.js';

// Jobs only, any number of these at once.
await runEntry(async (running) => {
  const platform = await openPlatform(running, requireDatabaseUrl(running.config));
  const app = await NestFactory.createApplicationContext(appOn(platform), {
    logger: nestLogger(running.log),
    abortOnError: false,
  });
  running.onStop(() => app.close());
  platform.queues.startWorkers();
  running.onStop(keepHeartbeat(platform));
  running.log.info('The worker runs.');
});
