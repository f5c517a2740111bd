import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Account } from '../../people/account.table.js';
import { StockFiguresService } from '../../stock/figures/stock-figures.service.js';
import type { PaperSize } from '../pdf/paper-size.js';
import { type Print, PrintsService } from '../prints.service.js';
import { type SlipKind, slipsOnPage, slipsPage } from './slips.js';

const initial: Readonly<Record<SlipKind, string>> = { count: 'C', draw: 'D' };

/** Slips for counts and draws, four to a page. No number is ever given twice. */
@Injectable()
export class SlipNumbersService {
  constructor(
    private readonly database: DataSource,
    private readonly figures: StockFiguresService,
    private readonly prints: PrintsService,
  ) {}

  /** "C-0041" to "C-0044". */
  async next(kind: SlipKind): Promise<readonly string[]> {
    const [row]: readonly { readonly last: number }[] = await this.database.query(nextSql, [
      kind,
      slipsOnPage,
    ]);
    const { last } = row!;
    return Array.from(
      { length: slipsOnPage },
      (_, at) => `${initial[kind]}-${String(last - slipsOnPage + 1 + at).padStart(4, '0')}`,
    );
  }

  async print(kind: SlipKind, paper: PaperSize, me: Account): Promise<Print> {
    const numbers = await this.next(kind);
    const { programmes } = await this.figures.scenario();
    const page = slipsPage({ kind, numbers, paper, programmes: programmes.map(({ code }) => code) });
    const title = `${kind === 'count' ? 'Count' : 'Draw'} slips ${numbers[0]} to ${numbers.at(-1)}`;
    return this.prints.make(
      { title, paper, pages: [page], fileName: `${kind}-slips-${numbers[0]}.pdf` },
      { subject: `${kind} slips`, detail: { numbers } },
      me,
    );
  }
}

const nextSql = `
  insert into slip_numbers (kind, last) values ($1, $2)
  on conflict (kind) do update set last = slip_numbers.last + $2 returning last`;
