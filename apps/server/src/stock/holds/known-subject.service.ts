import { nearestName } from '@drumline/contract';
import type { Movement } from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { Problem } from '../../http/problem.js';
import { StockFiguresService } from '../figures/stock-figures.service.js';

type Subject = Extract<Movement, { kind: 'held' }>['of'];

/** A slip of the pen in a recall would hold nothing, and nobody would know. */
@Injectable()
export class KnownSubjectService {
  constructor(
    private readonly database: DataSource,
    private readonly figures: StockFiguresService,
  ) {}

  /** Refuses a batch or a drum that neither the ledger nor the territory knows; the nearest known one is named. */
  async refuseUnknown(of: Subject): Promise<void> {
    const [field, typed] = 'batch' in of ? (['batch', of.batch] as const) : (['drum', of.drum] as const);
    const known = field === 'batch' ? await this.batches() : await this.drums();
    if (known.has(typed)) return;
    const near = nearestName(typed, known);
    throw new Problem('faults', `There is no ${field} ${typed}: nothing has been held.`, [
      {
        path: `of.${field}`,
        problem: `there is no ${field} ${typed}.`,
        remedy: near === null ? 'Read the number again.' : `Did you mean ${near}?`,
      },
    ]);
  }

  private async batches(): Promise<ReadonlySet<string>> {
    const rows: readonly { readonly batch: string }[] = await this.database.query(
      'select distinct batch from movements where batch is not null',
    );
    const { batches } = await this.figures.scenario();
    return new Set([...rows.map(({ batch }) => batch), ...batches.map(({ id }) => id)]);
  }

  private async drums(): Promise<ReadonlySet<string>> {
    const rows: readonly { readonly number: string }[] =
      await this.database.query('select number from drums');
    return new Set(rows.map(({ number }) => number));
  }
}
