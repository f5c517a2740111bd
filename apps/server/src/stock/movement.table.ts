import type { Movement, MovementKind } from '@drumline/stock';
import { EntitySchema } from 'typeorm';

/** An event of the ledger: the movement whole, and beside it what is searched by. */
export interface StoredMovement {
  readonly id: string;
  readonly kind: MovementKind;
  readonly drum: string | null;
  readonly batch: string | null;
  readonly place: string | null;
  readonly flight: string | null;
  readonly corrects: string | null;
  readonly happenedAt: Date;
  readonly writtenAt: Date;
  readonly receivedAt: Date;
  readonly means: Movement['means'];
  readonly accountId: string | null;
  readonly data: Movement;
}

export const movementTable = new EntitySchema<StoredMovement>({
  name: 'movement',
  tableName: 'movements',
  columns: {
    id: { type: 'uuid', primary: true },
    kind: { type: 'text' },
    drum: { type: 'text', nullable: true },
    batch: { type: 'text', nullable: true },
    place: { type: 'text', nullable: true },
    flight: { type: 'text', nullable: true },
    corrects: { type: 'uuid', nullable: true },
    happenedAt: { type: 'timestamptz' },
    writtenAt: { type: 'timestamptz' },
    receivedAt: { type: 'timestamptz' },
    means: { type: 'text' },
    accountId: { type: 'uuid', nullable: true },
    data: { type: 'jsonb' },
  },
});
