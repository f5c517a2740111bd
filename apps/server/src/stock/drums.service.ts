import {
  type Batch,
  type BatchState,
  type DrumState,
  type HistoryEntry,
  type Hold,
  litresOf,
  type Raised,
  replay,
  standingHold,
} from '@drumline/stock';
import type { IsoDate, Litres } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { type Page, pageOf } from '../http/page.js';
import { Problem } from '../http/problem.js';
import { LocalWordsService } from '../territory/local-words.service.js';
import { ridingHomeSql } from './figures/riding-home.js';
import { loadSlice } from './figures/slice.js';
import { StockFiguresService } from './figures/stock-figures.service.js';
import type { DrumsQuery } from './ledger/queries.js';

/** A drum as it is now: where it is, what is in it, whether it may be used. */
export interface DrumNow
  extends Pick<
    DrumState,
    'number' | 'alsoKnownAs' | 'where' | 'content' | 'batch' | 'openedAt' | 'tareKg' | 'grossKg' | 'lastDip'
  > {
  readonly litres: Litres;
  /** Its own hold, or its batch's. */
  readonly held: Hold | null;
  readonly condemned: Hold | null;
  /** Last day of use; null: its batch is not known. */
  readonly retestDue: IsoDate | null;
}

export interface DrumLife extends DrumNow {
  /** In the order in which it happened. */
  readonly timeline: readonly HistoryEntry[];
  /** Holds, releases and retests of its whole batch. */
  readonly batchTimeline: readonly HistoryEntry[];
  readonly raised: readonly Raised[];
}

@Injectable()
export class DrumsService {
  constructor(
    private readonly database: DataSource,
    private readonly figures: StockFiguresService,
    private readonly words: LocalWordsService,
  ) {}

  async list({ limit, after, last, place, view }: DrumsQuery): Promise<Page<DrumNow>> {
    const rows: readonly Row[] = await this.database.query(
      `${rowsSql}
       where ($1::text is null or reverse(number) like $1) and ($2::text is null or (place = $2 and riding.where is null))
         and ($3::text is null or number > $3) and ${view === undefined ? 'true' : viewSql[view]}
       order by number limit $4`,
      [last === undefined ? null : `${escaped(reversed(last))}%`, place, after, limit + 1],
    );
    const { batches } = await this.figures.scenario();
    const drums = rows.map((row) => drumNow(row, batches));
    return pageOf(drums, limit, ({ number }) => number);
  }

  /** These drums, wherever they are; those that the ledger has not heard of are left out. */
  async named(numbers: readonly string[]): Promise<ReadonlyMap<string, DrumNow>> {
    const rows: readonly Row[] = await this.database.query(`${rowsSql} where number = any($1)`, [numbers]);
    const { batches } = await this.figures.scenario();
    return new Map(rows.map((row) => [row.data.number, drumNow(row, batches)]));
  }

  /** By its number, or by a provisional number that was joined to it. */
  async get(number: string): Promise<DrumLife> {
    const { movements } = await loadSlice(this.database.manager, {
      drums: [number],
      batch: null,
      place: null,
    });
    const state = replay(movements);
    const drum = [...state.drums.values()].find(
      (each) => each.number === number || each.alsoKnownAs.includes(number),
    );
    if (drum === undefined) {
      const detail = `The ledger has not heard of a drum ${number}. Look for its last figures, ${number.slice(-4)}, on Drums.`;
      throw new Problem('not-found', detail);
    }
    const { batches } = await this.figures.scenario();
    const { history: timeline } = drum;
    const raised = await this.words.raised(drum.raised);
    const [kept]: readonly Row[] = await this.database.query(`${rowsSql} where number = $1`, [drum.number]);
    const riding = kept?.riding ?? null;
    const batch = state.batches.get(drum.batch ?? '') ?? null;
    const batchTimeline = batch?.history ?? [];
    return { ...drumNow({ data: drum, batch, riding }, batches), timeline, batchTimeline, raised };
  }
}

interface Row {
  readonly data: DrumState;
  /** State of its batch; null: nothing has happened to the batch as a whole. */
  readonly batch: BatchState | null;
  /** Brought back by a flight that is not down yet; null: where the ledger has it. */
  readonly riding: DrumState['where'] | null;
}

const rowsSql = `
  select drums.data, batch_states.data as batch, riding.where as riding from drums
  left join batch_states on batch_states.batch = drums.data ->> 'batch' ${ridingHomeSql}`;

/** As `isUnheardOf` of libs/stock: the drum stands in no figure of its place. */
const unheardOfSql = `(drums.data ->> 'content' = 'clean empty' and drums.data ->> 'batch' is null
  and drums.data ->> 'openedAt' is null)`;

const viewSql = {
  /** By itself, with its batch, or condemned. */
  held: `(drums.data -> 'fitness' -> 'held' <> 'null' or drums.data -> 'fitness' -> 'condemned' <> 'null'
    or batch_states.data @? '$.holds[*] ? (@.until == null)')`,
  open: `drums.data ->> 'content' = 'part used'`,
  empties: `drums.data ->> 'content' in ('clean empty', 'empty with residue', 'drained') and not ${unheardOfSql}`,
  /** In no figure of a place: aboard a flight, or nobody knows where it is or what is in it. */
  elsewhere: `(place is null or riding.where is not null or ${unheardOfSql})`,
} as const;

const reversed = (text: string): string => [...text].reverse().join('');
const escaped = (text: string): string => text.replace(/[\\%_]/g, (sign) => `\\${sign}`);

const drumNow = ({ data: drum, batch, riding }: Row, batches: readonly Batch[]): DrumNow => {
  const {
    number,
    alsoKnownAs,
    where,
    content,
    batch: id,
    openedAt,
    tareKg,
    grossKg,
    lastDip,
    fitness,
  } = drum;
  const registered = batches.find((each) => each.id === id);
  const retest = fitness.retest ?? batch?.retest;
  return {
    number,
    alsoKnownAs,
    where: riding ?? where,
    content,
    litres: litresOf(drum.millilitres),
    batch: id,
    openedAt,
    tareKg,
    grossKg,
    lastDip,
    held: fitness.held ?? standingHold(batch ?? undefined),
    condemned: fitness.condemned,
    retestDue: retest?.retestDue ?? registered?.retestDue ?? null,
  };
};
