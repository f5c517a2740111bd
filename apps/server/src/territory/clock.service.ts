import type { Settings } from '@drumline/contract';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { ask, prepared } from '../database/prepared.js';

/** The time of the territory. In a demo or a drill it is another day than on the wall. */
@Injectable()
export class ClockService {
  constructor(private readonly database: DataSource) {}

  async now(): Promise<Date> {
    const [settings] = await ask<SettingsRow>(this.database.manager, settingsSql);
    const start = settings?.data.clockStartsAt;
    if (settings === undefined || start === undefined) return new Date();
    return new Date(Date.parse(start) + Date.now() - settings.changedAt.getTime());
  }

  /** What this clock said at each of these moments on the wall, however it has been set since. */
  async saidAt(walls: readonly Date[]): Promise<readonly Date[]> {
    const rows = await ask<{ readonly said: Date }>(this.database.manager, saidSql, [walls]);
    return rows.map(({ said }) => said);
  }
}

interface SettingsRow {
  readonly data: Settings;
  readonly changedAt: Date;
}

const settingsSql = prepared(`
  select data, changed_at as "changedAt" from territory_entries
  where kind = 'settings' and id = 'current' and not removed`);

const saidSql = prepared(`
  select territory_time(wall) as said from unnest($1::timestamptz[]) with ordinality as each (wall, place)
  order by place`);
