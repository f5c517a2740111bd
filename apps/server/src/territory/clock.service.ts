import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { ask, prepared } from '../database/prepared.js';

/** The clock was set, at a moment on the wall; `startsAt` null: back to the time of day. */
export interface ClockSetting {
  readonly setAt: Date;
  readonly startsAt: Date | null;
}

/** The time of the territory. In a demo or a drill it is another day than on the wall. */
@Injectable()
export class ClockService {
  constructor(private readonly database: DataSource) {}

  async now(): Promise<Date> {
    const [last] = await ask<ClockSetting>(this.database.manager, lastSql);
    const wall = Date.now();
    if (last === undefined || last.startsAt === null) return new Date(wall);
    return new Date(last.startsAt.getTime() + wall - last.setAt.getTime());
  }

  /** However it has been set, the first time first. */
  settings(): Promise<readonly ClockSetting[]> {
    return ask<ClockSetting>(this.database.manager, settingsSql);
  }

  /** What this clock said at each of these moments on the wall, however it has been set since. */
  async saidAt(walls: readonly Date[]): Promise<readonly Date[]> {
    const rows = await ask<{ readonly said: Date }>(this.database.manager, saidSql, [walls]);
    return rows.map(({ said }) => said);
  }
}

const settings = 'select set_at as "setAt", starts_at as "startsAt" from clock_settings order by set_at';

const settingsSql = prepared(settings);

const lastSql = prepared(`${settings} desc limit 1`);

const saidSql = prepared(`
  select territory_time(wall) as said from unnest($1::timestamptz[]) with ordinality as each (wall, place)
  order by place`);
