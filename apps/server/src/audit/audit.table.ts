import { EntitySchema } from 'typeorm';

/** One thing that somebody did. The database refuses to change or remove it. */
export interface AuditEntry {
  readonly id: string;
  readonly at: Date;
  readonly accountId: string | null;
  /** The name at the time; the program itself is "drumline". */
  readonly person: string;
  /** A verb of the trade: "changed", "approved", "signed in". */
  readonly did: string;
  /** What it was done to, like `place XLOR`. */
  readonly subject: string;
  readonly requestId: string | null;
  readonly detail: Readonly<Record<string, unknown>>;
}

export const auditTable = new EntitySchema<AuditEntry>({
  name: 'audit_entry',
  tableName: 'audit_entries',
  columns: {
    id: { type: 'bigint', primary: true, generated: 'increment' },
    at: { type: 'timestamptz', createDate: true },
    accountId: { type: 'uuid', nullable: true },
    person: { type: 'text' },
    did: { type: 'text' },
    subject: { type: 'text' },
    requestId: { type: 'text', nullable: true },
    detail: { type: 'jsonb' },
  },
});
