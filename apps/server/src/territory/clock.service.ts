import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { entryTable } from './entry.table.js';
import type { Settings } from './kinds.js';

/** The time of the territory. In a demo or a drill it is another day than on the wall. */
@Injectable()
export class ClockService {
  constructor(private readonly database: DataSource) {}

  async now(): Promise<Date> {
    const settings = await this.database
      .getRepository(entryTable)
      .findOneBy({ kind: 'settings', id: 'current', removed: false });
    const start = (settings?.data as Settings | undefined)?.clockStartsAt;
    if (settings === null || start === undefined) return new Date();
    return new Date(Date.parse(start) + Date.now() - settings.changedAt.getTime());
  }
}
