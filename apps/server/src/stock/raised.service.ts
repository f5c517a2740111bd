import { overCapacity, type PlaceBalance, type Raised } from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { type Page, pageOf } from '../http/page.js';
import type { RaisedQuery } from './queries.js';
import { StockFiguresService } from './stock-figures.service.js';

export interface RaisedNow extends Raised {
  /** When the last of its movements came in; null: it is so now, whatever made it so. */
  readonly raisedAt: Date | null;
}

/** What somebody has to look at. */
@Injectable()
export class RaisedService {
  constructor(
    private readonly database: DataSource,
    private readonly figures: StockFiguresService,
  ) {}

  /** Caches over their capacity, then the newest first. */
  async list({ limit, after }: RaisedQuery): Promise<Page<RaisedNow>> {
    const rows: readonly { readonly data: Raised; readonly raisedAt: Date }[] = await this.database.query(
      `select data, raised_at as "raisedAt" from raised
       where $1::text is null or (raised_at, id) < (select raised_at, id from raised where id = $1)
       order by raised_at desc, id desc limit $2`,
      [after, limit + 1],
    );
    const { items, next } = pageOf(rows, limit, ({ data }) => data.id);
    const ofMovements = items.map(({ data, raisedAt }) => ({ ...data, raisedAt }));
    return { items: after === undefined ? [...(await this.overfull()), ...ofMovements] : ofMovements, next };
  }

  private async overfull(): Promise<readonly RaisedNow[]> {
    const { scenario, stock } = await this.figures.current();
    const { fillLitres } = scenario.policy.drum;
    const balanceOf = (place: string): PlaceBalance | undefined => stock.places.get(place)?.balance;
    return scenario.caches.flatMap((cache) => {
      const raised = overCapacity(balanceOf(cache.place), cache, fillLitres);
      return raised ? [{ ...raised, raisedAt: null }] : [];
    });
  }
}
