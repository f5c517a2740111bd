import type { Role } from '@drumline/contract';
import { EntitySchema } from 'typeorm';

/** A person who may sign in. */
export interface Account {
  readonly id: string;
  /** Typed at sign-in; lower case. */
  readonly name: string;
  readonly fullName: string;
  readonly roles: readonly Role[];
  /** Whose flights and duties are "own": a pilot or a helicopter of the territory. */
  readonly crew: string | null;
  /** Whose programme is "own", for a customer's field leader. */
  readonly programmes: readonly string[];
  readonly passwordHash: string;
  readonly oneTimePassword: boolean;
  readonly disabled: boolean;
  readonly version: number;
  readonly createdAt: Date;
}

export const accountTable = new EntitySchema<Account>({
  name: 'account',
  tableName: 'accounts',
  columns: {
    id: { type: 'uuid', primary: true },
    name: { type: 'text' },
    fullName: { type: 'text' },
    roles: { type: 'text', array: true },
    crew: { type: 'text', nullable: true },
    programmes: { type: 'text', array: true },
    passwordHash: { type: 'text' },
    oneTimePassword: { type: 'boolean' },
    disabled: { type: 'boolean', default: false },
    version: { type: 'integer', default: 1 },
    createdAt: { type: 'timestamptz', createDate: true },
  },
});
