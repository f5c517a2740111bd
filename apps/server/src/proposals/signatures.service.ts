import type { Role } from '@drumline/contract';
import { Injectable } from '@nestjs/common';
import type { EntityManager } from 'typeorm';
import type { Account } from '../people/account.table.js';
import { PeopleService } from '../people/people.service.js';
import { mayBeOneOfTwo, rolesOfTwo } from '../people/permission.js';
import { agreementTable, type Proposal } from './proposal.table.js';

export interface ShownProposal extends Proposal {
  readonly agreed: readonly string[];
  /** The same people by name, the proposer among them. */
  readonly agreedBy: readonly string[];
  readonly draftedBy: string;
  /** Those of them whose signature counts, by name, the first one first. */
  readonly signedBy: readonly string[];
  readonly stillToSign: {
    readonly people: number;
    /** Of the people who have not signed, the roles whose signature would count; none: nobody can. */
    readonly roles: readonly Role[];
  };
}

/** So many different people with the right have to put their names to it. */
export const signaturesNeeded = 2;

/** Who has signed a proposal, whose signature counts, and who has still to sign. */
@Injectable()
export class SignaturesService {
  constructor(private readonly people: PeopleService) {}

  /** Agreements of people who have the right by now; a draft by somebody without it counts for nothing. */
  async countedFor(transaction: EntityManager, { id, act }: Proposal): Promise<readonly Account[]> {
    const agreements = await transaction.findBy(agreementTable, { proposalId: id });
    const people = await this.people.active(
      transaction,
      agreements.map(({ accountId }) => accountId),
    );
    return people.filter((person) => mayBeOneOfTwo(person, act));
  }

  async shown(transaction: EntityManager, proposal: Proposal): Promise<ShownProposal> {
    const people: readonly { readonly id: string; readonly name: string }[] = await transaction.query(
      `select account_id as id, full_name as name from agreements join accounts on accounts.id = account_id
       where proposal_id = $1 order by agreements.at`,
      [proposal.id],
    );
    const counted = new Set((await this.countedFor(transaction, proposal)).map(({ id }) => id));
    const agreed = people.map(({ id }) => id);
    const others = (await this.people.everybodyActive(transaction)).filter(({ id }) => !agreed.includes(id));
    return {
      ...proposal,
      agreed,
      agreedBy: people.map(({ name }) => name),
      draftedBy: people.find(({ id }) => id === proposal.proposedBy)?.name ?? '',
      signedBy: people.filter(({ id }) => counted.has(id)).map(({ name }) => name),
      stillToSign: {
        people: proposal.state === 'open' ? Math.max(0, signaturesNeeded - counted.size) : 0,
        roles: rolesOfTwo(others, proposal.act),
      },
    };
  }
}
