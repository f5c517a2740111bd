import type { RaisedActRequest } from '@drumline/contract';
import { mayHurt, missingLoading, overCapacity, type PlaceBalance, type Raised } from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { type Page, pageOf } from '../../http/page.js';
import { Problem } from '../../http/problem.js';
import type { Account } from '../../people/account.table.js';
import { LocalWordsService } from '../../territory/local-words.service.js';
import { StockFiguresService } from '../figures/stock-figures.service.js';
import type { RaisedQuery } from '../ledger/queries.js';
import { isSeen, lastAct, type RaisedAct, RaisedActsService } from './raised-acts.service.js';

export interface RaisedNow extends Raised {
  /** When the last of its movements came in; null: it is so now, whatever made it so. */
  readonly raisedAt: Date | null;
  readonly mayHurt: boolean;
  /** Somebody has looked at it as it reads now. */
  readonly isSeen: boolean;
  /** What was done about it last, by whom; null: nothing. */
  readonly lastAct: RaisedAct | null;
}

/** How many are left out. */
export interface More {
  readonly mayHurt: number;
  readonly rest: number;
}

/** What somebody has to look at, or has looked at. */
@Injectable()
export class RaisedService {
  private readonly others: (() => Promise<readonly Raised[]>)[] = [];

  constructor(
    private readonly database: DataSource,
    private readonly figures: StockFiguresService,
    private readonly acts: RaisedActsService,
    private readonly words: LocalWordsService,
  ) {}

  /** At start-up: what another feature finds to be looked at now, whatever made it so. */
  findToo(find: () => Promise<readonly Raised[]>): void {
    this.others.push(find);
  }

  /** What can hurt people first; then what is so now, caches over their capacity before the rest; then the newest. */
  async list({ limit, after, state }: RaisedQuery): Promise<Page<RaisedNow>> {
    const rows: readonly Found[] = await this.database.query(listSql, [
      after,
      [...mayHurt],
      state,
      limit + 1,
    ]);
    const { items: found, next } = pageOf(rows, limit, ({ data }) => data.id);
    const ofMovements = found.map(raisedNow);
    if (after !== undefined) return { items: await this.words.raised(ofMovements), next };
    const now = (await this.soNow()).filter((each) => state === 'all' || each.isSeen === (state === 'seen'));
    const items = [...now, ...ofMovements].toSorted(
      (one, other) => Number(other.mayHurt) - Number(one.mayHurt),
    );
    return { items: await this.words.raised(items), next };
  }

  /** So many of what is open, in the order of the list, and how many more there are. */
  async firstOpen(limit: number): Promise<{ readonly items: readonly RaisedNow[]; readonly more: More }> {
    const { items, next } = await this.list({ limit, state: 'open' });
    if (next === null) return { items, more: { mayHurt: 0, rest: 0 } };
    const [more]: readonly More[] = await this.database.query(countSql, [next, [...mayHurt], 'open']);
    return { items, more: more! };
  }

  /** The same id is the same act: sent again it is answered like the first, whatever has become of the thing. */
  async act(id: string, request: RaisedActRequest, by: Account): Promise<RaisedAct> {
    const before = await this.acts.repeated(id, request);
    if (before !== null) return before;
    await this.acts.append(id, request, await this.one(request.raised), by);
    return (await this.acts.repeated(id, request))!;
  }

  private async one(id: string): Promise<Raised> {
    const [row]: readonly { readonly data: Raised }[] = await this.database.query(
      'select data from raised where id = $1',
      [id],
    );
    const found = row?.data ?? (await this.soNow()).find((raised) => raised.id === id);
    if (found !== undefined) return found;
    throw new Problem('not-found', `Nothing is raised as ${id}, or no longer. See /api/raised.`);
  }

  private async soNow(): Promise<readonly RaisedNow[]> {
    const { scenario, stock } = await this.figures.current();
    const { fillLitres } = scenario.policy.drum;
    const balanceOf = (place: string): PlaceBalance | undefined => stock.places.get(place)?.balance;
    const found = scenario.caches.flatMap(
      (cache) => overCapacity(balanceOf(cache.place), cache, fillLitres) ?? [],
    );
    for (const find of this.others) found.push(...(await find()));
    const things = [...found.map((data) => ({ data, raisedAt: null })), ...(await this.missingLoadings())];
    const acts = await this.acts.last(things.map(({ data }) => data.id));
    return things.map((thing) => raisedNow({ ...thing, lastAct: acts.get(thing.data.id) ?? null }));
  }

  /** The book raises each drum by itself; people look at the flight. */
  private async missingLoadings(): Promise<readonly Omit<Found, 'lastAct'>[]> {
    const rows: readonly FlightsNotAboard[] = await this.database.query(missingLoadingsSql);
    return rows.map(({ flight, notAboard, raisedAt }) => ({
      data: missingLoading(flight, notAboard),
      raisedAt,
    }));
  }
}

interface Found {
  readonly data: Raised;
  readonly raisedAt: Date | null;
  readonly lastAct: RaisedAct | null;
}

interface FlightsNotAboard {
  readonly flight: string;
  readonly notAboard: readonly Raised[];
  readonly raisedAt: Date;
}

const raisedNow = ({ data, raisedAt, lastAct: act }: Found): RaisedNow => ({
  ...data,
  raisedAt,
  mayHurt: mayHurt.has(data.kind),
  isSeen: isSeen(data, act),
  lastAct: act,
});

/** What comes after $1 in the order of the list; $2: kinds that may hurt; $3: the state asked for. */
const wantedSql = `from raised
  where kind <> 'not aboard' and ($1::text is null
    or (kind = any($2::text[]), raised_at, id) < (select kind = any($2::text[]), raised_at, id from raised where id = $1))
    and ($3 = 'all' or ($3 = 'seen') = coalesce(
      (select act = 'seen' and what = data ->> 'what' from raised_acts
       where raised_acts.raised = raised.id order by entry desc limit 1), false))`;

const listSql = `
  select data, raised_at as "raisedAt", ${lastAct('raised.id')} as "lastAct" ${wantedSql}
  order by kind = any($2::text[]) desc, raised_at desc, id desc limit $4`;

const countSql = `
  select count(*) filter (where kind = any($2::text[]))::int as "mayHurt",
    count(*) filter (where kind <> all($2::text[]))::int as rest ${wantedSql}`;

const missingLoadingsSql = `
  select flight, json_agg(data) as "notAboard", max(raised_at) as "raisedAt" from raised
  where kind = 'not aboard' group by flight order by max(raised_at) desc, flight`;
