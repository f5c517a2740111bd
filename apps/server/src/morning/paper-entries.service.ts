import type { IsoInstant } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { paperEntriesSql, silenceSql } from './paper-entries-sql.js';
import { type PaperFacts, paperWords } from './paper-words.js';

/** What somebody entered at the desk for a crew. */
export interface PaperEntry {
  readonly id: string;
  readonly source: 'movement' | 'flight report' | 'surface report';
  readonly means: 'radio' | 'paper';
  readonly flight: string | null;
  readonly what: string;
  readonly happenedAt: IsoInstant;
  readonly writtenAt: IsoInstant;
  readonly enteredAt: IsoInstant;
  /** Who said or wrote it. */
  readonly by: string;
  readonly enteredBy: string | null;
}

export interface PaperEntries {
  readonly since: IsoInstant;
  /** In the order in which they were written down. */
  readonly items: readonly PaperEntry[];
  /** From the last word that base had before the first of them was written on paper, to the next; null: none is. */
  readonly silence: { readonly from: IsoInstant | null; readonly until: IsoInstant | null } | null;
  readonly next: null;
}

/** More than these nobody hands over item by item; the ledger has them all. */
const most = 1000;

/** What was entered for crews by radio and from paper, with when it was written beside when it was entered. */
@Injectable()
export class PaperEntriesService {
  constructor(private readonly database: DataSource) {}

  async since(since: IsoInstant): Promise<PaperEntries> {
    const rows: readonly (Omit<PaperEntry, 'what'> & PaperFacts)[] = await this.database.query(
      paperEntriesSql,
      [since, most],
    );
    const items = rows.map(({ kind, place, drums, facts, ...entry }) => ({
      ...entry,
      what: paperWords({ kind, place, drums, facts }),
    }));
    const first = items.find(({ means }) => means === 'paper');
    return { since, items, silence: first === undefined ? null : await this.silenceAt(first), next: null };
  }

  private async silenceAt({ writtenAt }: PaperEntry): Promise<PaperEntries['silence']> {
    const [silence] = await this.database.query(silenceSql, [writtenAt]);
    return silence;
  }
}
