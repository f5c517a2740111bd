import {
  type KnownHere,
  type Movement,
  millilitresOf,
  type Raised,
  replay,
  standingCorrections,
  strangeIn,
} from '@drumline/stock';
import { Injectable, type OnModuleInit } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { TerritoryService } from '../../territory/territory.service.js';
import { loadSlice } from '../figures/slice.js';
import { StockFiguresService } from '../figures/stock-figures.service.js';
import { RaisedService } from '../raised/raised.service.js';

/** What reports say that nobody has set up, that no drum can be, or that is unlike its batch: to be looked at while the report stands so. */
@Injectable()
export class StrangeReportsService implements OnModuleInit {
  constructor(
    private readonly database: DataSource,
    private readonly figures: StockFiguresService,
    private readonly territory: TerritoryService,
    private readonly raised: RaisedService,
  ) {}

  onModuleInit(): void {
    this.raised.findToo(() => this.find());
  }

  private async find(): Promise<readonly Raised[]> {
    const known = await this.knownHere();
    const found: readonly { readonly data: Movement }[] = await this.database.query(strangeSql, [
      [...known.places],
      [...known.aircraft],
      [...known.programmes],
      [...known.batches],
      millilitresOf(known.brimLitres),
    ]);
    const strange = found.flatMap(({ data }) => (strangeIn(data, known).length > 0 ? [data] : []));
    const standing = await this.standing(strange);
    const settled = await this.settledCounts(standing);
    return standing.flatMap((movement) =>
      strangeIn(movement, known).filter(({ kind }) => kind !== countFigures || !settled.has(movement.id)),
    );
  }

  /** Counts whose difference two people have looked into and closed. */
  private async settledCounts(movements: readonly Movement[]): Promise<ReadonlySet<string>> {
    const ids = movements.flatMap(({ kind, id }) => (kind === 'counted' ? [id] : []));
    const rows: readonly { readonly count: string }[] = await this.database.query(
      'select count from case_closings where count = any($1::uuid[])',
      [ids],
    );
    return new Set(rows.map(({ count }) => count));
  }

  /** Names that were ever set up: what a helicopter drew before it left is nothing to look at. */
  private async knownHere(): Promise<KnownHere> {
    const { policy, batches } = await this.figures.scenario();
    const names = await this.territory.everNamed();
    const of = (...kinds: readonly string[]) => new Set(kinds.flatMap((kind) => names.get(kind) ?? []));
    const rows: readonly { readonly name: string }[] = await this.database.query(`${distinctOf('batch')}
      select name from named where name is not null`);
    return {
      places: of('places'),
      aircraft: of('aircraft', 'helicopters'),
      programmes: of('programmes'),
      batches: of('batches'),
      batchesInDrums: new Set(rows.map(({ name }) => name)),
      brimLitres: policy.drum.brimLitres,
      fillLitres: policy.drum.fillLitres,
      countTolerance: policy.countTolerance,
      densityAt15: new Map(batches.map(({ id, densityAt15KgPerLitre }) => [id, densityAt15KgPerLitre])),
      densityTolerance: policy.densityTolerance ?? null,
    };
  }

  /** Those that nobody has taken back. */
  private async standing(strange: readonly Movement[]): Promise<readonly Movement[]> {
    if (strange.length === 0) return [];
    const ids = strange.map(({ id }) => id);
    const { movements } = await loadSlice(this.database.manager, nobody, { ids });
    const state = replay(movements);
    return strange.filter(({ id }) => standingCorrections(state, id).length === 0);
  }
}

const countFigures: Raised['kind'] = 'impossible figures';

const nobody = { drums: [], batch: null, place: null };

/** The names in an indexed column, each looked up from the one before: a long ledger has few of them. */
const distinctOf = (column: string): string => `with recursive named (name) as (
  (select min(${column}) from movements where ${column} is not null)
  union all
  select (select min(${column}) from movements where ${column} > named.name) from named where named.name is not null)`;

const notAmong = (column: string, known: string): string =>
  `${column} = any(array(${distinctOf(column)} select name from named where name <> all(${known}::text[])))`;

const strangeSql = `
  select data from movements
  where ${notAmong('place', '$1')} or ${notAmong('aircraft', '$2')} or ${notAmong('programme', '$3')}
    or ${notAmong('batch', '$4')} or ${notAmong('held_batch', '$4')}
    or most_millilitres > $5::bigint or is_odd_weight or kind in ('filled', 'counted')
  order by entry desc`;
