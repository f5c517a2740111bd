import { EntitySchema } from 'typeorm';

/** A signed-in browser. Kept as a row, so that it can be ended from elsewhere. */
export interface Session {
  readonly id: string;
  /** The cookie itself is not kept. */
  readonly tokenHash: Buffer;
  readonly accountId: string;
  readonly device: string;
  /** The phone page has asked with it: it may be far from base. An office's browser never is. */
  readonly onPhone: boolean;
  readonly createdAt: Date;
  readonly lastSeenAt: Date;
  readonly expiresAt: Date;
  readonly revokedAt: Date | null;
}

export const sessionTable = new EntitySchema<Session>({
  name: 'session',
  tableName: 'sessions',
  columns: {
    id: { type: 'uuid', primary: true, generated: 'uuid' },
    tokenHash: { type: 'bytea' },
    accountId: { type: 'uuid' },
    device: { type: 'text' },
    onPhone: { type: 'boolean', default: false },
    createdAt: { type: 'timestamptz', createDate: true },
    lastSeenAt: { type: 'timestamptz', createDate: true },
    expiresAt: { type: 'timestamptz' },
    revokedAt: { type: 'timestamptz', nullable: true },
  },
});
