import { isDeepStrictEqual } from 'node:util';
import {
  type BatchState,
  type DrumState,
  type Held,
  type Hold,
  type HoldOf,
  litresOf,
  standingHold,
} from '@drumline/stock';
import { type Litres, litres } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';

/** A hold that nobody has released. */
export interface StandingHold extends Hold {
  /** Its movement, to ask who has not heard; null: a report of something unsound set it. */
  readonly id: string | null;
  readonly of: HoldOf;
  /** Drums with fuel that it takes out of use. */
  readonly drums: number;
  readonly litres: Litres;
  /** Codes of the places where they stand. */
  readonly places: readonly string[];
}

/** What is held now. */
@Injectable()
export class StandingHoldsService {
  constructor(private readonly database: DataSource) {}

  /** The newest first. */
  async all(): Promise<readonly StandingHold[]> {
    const batches = await this.read<BatchState>(heldBatches);
    const ids = batches.map(({ batch }) => batch);
    const drums = await this.read<DrumState>(drumsOfHolds, [ids]);
    const single = drums.filter(({ fitness }) => fitness.held !== null);
    const set = await this.read<Held>(movementsOfHolds, [ids, single.map(({ number }) => number)]);
    const ofBatches = batches.map((state) => ({
      of: { batch: state.batch },
      hold: standingHold(state)!,
      named: drums.filter(({ batch }) => batch === state.batch),
    }));
    const ofDrums = single.map((drum) => ({
      of: { drum: drum.number },
      hold: drum.fitness.held!,
      named: [drum],
    }));
    return [...ofBatches, ...ofDrums]
      .map((found) => standing(found, set))
      .sort((one, other) => Date.parse(other.at) - Date.parse(one.at));
  }

  private async read<Data>(sql: string, values: readonly unknown[] = []): Promise<readonly Data[]> {
    const rows: readonly { readonly data: Data }[] = await this.database.query(sql, [...values]);
    return rows.map(({ data }) => data);
  }
}

interface FoundHold {
  readonly of: HoldOf;
  readonly hold: Hold;
  readonly named: readonly DrumState[];
}

const standing = ({ of, hold, named }: FoundHold, set: readonly Held[]): StandingHold => {
  const full = named.filter(({ millilitres }) => millilitres > 0);
  const isSetBy = (held: Held) => isDeepStrictEqual(held.of, of) && held.happenedAt === hold.at;
  return {
    id: set.findLast(isSetBy)?.id ?? null,
    of,
    ...hold,
    drums: full.length,
    litres: litres(full.reduce((sum, { millilitres }) => sum + litresOf(millilitres), 0)),
    places: [...new Set(full.flatMap(({ where }) => (where.kind === 'at' ? [where.place] : [])))].sort(),
  };
};

const heldBatches = `select data from batch_states where data @? '$.holds[*] ? (@.until == null)'`;
const drumsOfHolds = `
  select data from drums where data ->> 'batch' = any($1) or data -> 'fitness' -> 'held' <> 'null' order by number`;
const movementsOfHolds = `
  select data from movements where kind = 'held' and (held_batch = any($1) or drum = any($2)) order by entry`;
