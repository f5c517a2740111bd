import { type DynamicModule, Module } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Config } from './config.js';
import type { Log } from './log.js';
import { Queues } from './queue/queues.js';

export const LOG = Symbol('log');
export const CONFIG = Symbol('config');

/** What every feature stands on, opened before the application and closed after it. */
export interface Platform {
  readonly config: Config;
  readonly log: Log;
  readonly database: DataSource;
  readonly queues: Queues;
}

@Module({})
class PlatformModule {}

/** Gives it to every feature, by type or by LOG and CONFIG. */
export const platformModule = ({ config, log, database, queues }: Platform): DynamicModule => {
  const providers = [
    { provide: CONFIG, useValue: config },
    { provide: LOG, useValue: log },
    { provide: DataSource, useValue: database },
    { provide: Queues, useValue: queues },
  ];
  return { module: PlatformModule, global: true, providers, exports: providers };
};
