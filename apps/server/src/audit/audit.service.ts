import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager, LessThan } from 'typeorm';
import { type Page, type PageQuery, pageOf } from '../http/page.js';
import { requestContext } from '../log.js';
import { type AuditEntry, auditTable } from './audit.table.js';

/** Who did it; the program itself where there is no person. */
export interface Actor {
  readonly id: string | null;
  readonly name: string;
  /** What other people know them by. */
  readonly fullName?: string;
}

export const theProgram: Actor = { id: null, name: 'drumline' };

@Injectable()
export class AuditService {
  constructor(private readonly database: DataSource) {}

  /** Writes it with the change itself: given the change's own transaction, both are kept or neither. */
  async record(
    transaction: EntityManager,
    actor: Actor,
    did: string,
    subject: string,
    detail: Readonly<Record<string, unknown>> = {},
  ): Promise<void> {
    await transaction.insert(auditTable, {
      accountId: actor.id,
      person: actor.name,
      did,
      subject,
      requestId: requestContext.getStore()?.requestId ?? null,
      detail: { ...detail } as object,
    });
  }

  /** The newest first. */
  async list({ limit, after }: PageQuery): Promise<Page<AuditEntry>> {
    const rows = await this.database.getRepository(auditTable).find({
      where: after === undefined ? {} : { id: LessThan(after) },
      order: { id: 'DESC' },
      take: limit + 1,
    });
    return pageOf(rows, limit, (entry) => entry.id);
  }
}
