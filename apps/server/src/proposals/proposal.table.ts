import type { PermittedAct } from '@drumline/contract';
import { EntitySchema } from 'typeorm';

/** Something that takes two people: written by one, in force when enough others have agreed. */
export interface Proposal {
  readonly id: string;
  /** Who carries it out when it is agreed: the name under which a feature registered. */
  readonly carriedOutBy: string;
  readonly act: PermittedAct;
  /** What it is about, like `strip limit XLOR-B`. */
  readonly subject: string;
  readonly payload: Readonly<Record<string, unknown>>;
  readonly proposedBy: string;
  readonly proposedAt: Date;
  readonly state: 'open' | 'in force' | 'withdrawn';
  readonly settledAt: Date | null;
}

export interface Agreement {
  readonly proposalId: string;
  readonly accountId: string;
  readonly at: Date;
}

export const proposalTable = new EntitySchema<Proposal>({
  name: 'proposal',
  tableName: 'proposals',
  columns: {
    id: { type: 'uuid', primary: true, generated: 'uuid' },
    carriedOutBy: { type: 'text' },
    act: { type: 'text' },
    subject: { type: 'text' },
    payload: { type: 'jsonb' },
    proposedBy: { type: 'uuid' },
    proposedAt: { type: 'timestamptz', createDate: true },
    state: { type: 'text', default: 'open' },
    settledAt: { type: 'timestamptz', nullable: true },
  },
});

export const agreementTable = new EntitySchema<Agreement>({
  name: 'agreement',
  tableName: 'agreements',
  columns: {
    proposalId: { type: 'uuid', primary: true },
    accountId: { type: 'uuid', primary: true },
    at: { type: 'timestamptz', createDate: true },
  },
});
