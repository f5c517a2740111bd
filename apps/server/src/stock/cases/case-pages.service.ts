import type { CaseClosing, Counted } from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { type Page, type PageQuery, pageOf } from '../../http/page.js';
import { ProposalsService, type ShownProposal } from '../../proposals/proposals.service.js';
import { CasesService, type OpenCase } from './cases.service.js';

/** With the ways of closing it that wait for a second person. */
export interface ListedCase extends OpenCase {
  readonly proposals: readonly ShownProposal[];
}

export interface ClosedCase {
  readonly closing: CaseClosing;
  /** The count that opened it. */
  readonly counted: Counted;
}

/** Difference cases as the pages show them. */
@Injectable()
export class CasePagesService {
  constructor(
    private readonly database: DataSource,
    private readonly cases: CasesService,
    private readonly proposals: ProposalsService,
  ) {}

  async open(): Promise<readonly ListedCase[]> {
    const [open, waiting] = await Promise.all([this.cases.open(), this.proposals.listOpen()]);
    return open.map((each) => ({
      ...each,
      proposals: waiting.filter(
        ({ carriedOutBy, payload }) => carriedOutBy === 'difference case' && payload.count === each.count,
      ),
    }));
  }

  /** The newest first. */
  async closed({ limit, after }: PageQuery): Promise<Page<ClosedCase>> {
    const rows: readonly ClosedCase[] = await this.database.query(
      `select case_closings.data as closing, movements.data as counted from case_closings
       join movements on movements.id = count
       where $2::text is null
         or (closed_at, count) < (select closed_at, count from case_closings where count::text = $2)
       order by closed_at desc, count desc limit $1`,
      [limit + 1, after],
    );
    return pageOf(rows, limit, ({ closing }) => closing.count);
  }
}
