import type { Scenario } from '@drumline/planning';
import { litresOf, type Movement } from '@drumline/stock';
import { localDate } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { TerritoryService } from '../territory/territory.service.js';

type Drawn = Extract<Movement, { kind: 'drawn' }>;
type Corrected = Extract<Movement, { kind: 'corrected' }>;

/** What belongs to one customer's programme. */
@Injectable()
export class OwnProgrammesService {
  constructor(
    private readonly database: DataSource,
    private readonly territory: TerritoryService,
  ) {}

  async list(codes: readonly string[]) {
    const programmes = await this.kept<Scenario['programmes'][number]>('programmes');
    return programmes.filter(({ code }) => codes.includes(code)).map(({ code, name }) => ({ code, name }));
  }

  async tasks(programme: string) {
    const tasks = await this.kept<Scenario['helicopterTasks'][number]>('helicopter-tasks');
    return tasks
      .filter((task) => task.programme === programme)
      .map(({ date, place, hours, litres, note }) => ({ date, place, hours, litres, note: note ?? null }))
      .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  }

  async drawn(programme: string) {
    const rows: readonly { readonly data: Drawn | Corrected }[] = await this.database.query(drawnSql, [
      programme,
    ]);
    const movements = rows.map(({ data }) => data);
    const [settings] = await this.kept<{ readonly timeZone: string }>('settings');
    const draws = standing(movements).filter((movement) => movement.kind === 'drawn');
    return {
      litres: draws.reduce((sum, { millilitres }) => sum + millilitres, 0) / 1000,
      items: draws.map(({ happenedAt, place, into, millilitres }) => ({
        at: happenedAt,
        date: localDate(happenedAt, settings?.timeZone ?? 'UTC'),
        place,
        into,
        litres: litresOf(millilitres),
      })),
    };
  }

  private async kept<Line>(kind: string): Promise<readonly Line[]> {
    const entries = await this.territory.all(kind);
    return entries.map(({ data }) => data as Line);
  }
}

/** Draws of a programme, and whatever corrects them, or corrects a correction. */
const drawnSql = `
  with recursive found as (
    select id, data, happened_at from movements where kind = 'drawn' and data ->> 'programme' = $1
    union
    select movements.id, movements.data, movements.happened_at
    from movements join found on movements.corrects = found.id
  )
  select data from found order by happened_at desc, id`;

/** Without what was taken back. A correction that was itself taken back takes nothing back. */
const standing = (movements: readonly (Drawn | Corrected)[]): readonly (Drawn | Corrected)[] => {
  const stands = ({ id }: { readonly id: string }): boolean =>
    !movements.some((other) => other.kind === 'corrected' && other.corrects === id && stands(other));
  return movements.filter(stands);
};
