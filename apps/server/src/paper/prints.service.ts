import { localDate, localTime } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { AuditService } from '../audit/audit.service.js';
import type { Account } from '../people/account.table.js';
import { ClockService } from '../territory/clock.service.js';
import { makePdf, type PrintedPages } from './pdf/make-pdf.js';
import { type PrintStamp, shortDay } from './pdf/print-stamp.js';

/** A finished print, and the name that its file gets. */
export interface Print {
  readonly pdf: Buffer;
  readonly fileName: string;
}

/** For the audit: what was printed, and which version of it. */
interface Printed {
  readonly subject: string;
  readonly detail: Readonly<Record<string, unknown>>;
}

/** What every print has: a stamp, a file, a line in the audit. */
@Injectable()
export class PrintsService {
  constructor(
    private readonly database: DataSource,
    private readonly audit: AuditService,
    private readonly clock: ClockService,
  ) {}

  async stamp(timeZone: string, by: Account): Promise<PrintStamp> {
    const at = (await this.clock.now()).toISOString();
    return { at: `${shortDay(localDate(at, timeZone))} ${localTime(at, timeZone)}`, by: by.fullName };
  }

  /** Nobody is given a print that is not in the audit. */
  async make(
    pages: PrintedPages & { readonly fileName: string },
    printed: Printed,
    by: Account,
  ): Promise<Print> {
    const pdf = await makePdf(pages);
    const detail = { ...printed.detail, paper: pages.paper };
    await this.audit.record(this.database.manager, by, 'printed', printed.subject, detail);
    return { pdf, fileName: pages.fileName };
  }
}
