import { EntitySchema } from 'typeorm';

/** One thing of the operator's territory: a place, an aircraft, a task, a rule. */
export interface Entry {
  readonly kind: string;
  readonly id: string;
  readonly version: number;
  readonly data: unknown;
  /** Order within its kind, as first imported. */
  readonly position: number;
  readonly removed: boolean;
  /** Null: the program itself, at an import on an empty database. */
  readonly changedBy: string | null;
  readonly changedAt: Date;
}

export const entryTable = new EntitySchema<Entry>({
  name: 'territory_entry',
  tableName: 'territory_entries',
  columns: {
    kind: { type: 'text', primary: true },
    id: { type: 'text', primary: true },
    version: { type: 'integer' },
    data: { type: 'jsonb' },
    position: { type: 'integer', default: 0 },
    removed: { type: 'boolean', default: false },
    changedBy: { type: 'uuid', nullable: true },
    changedAt: { type: 'timestamptz' },
  },
});
