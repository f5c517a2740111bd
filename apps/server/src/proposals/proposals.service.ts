import { isDeepStrictEqual } from 'node:util';
import type { PermittedAct } from '@drumline/contract';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { AuditService } from '../audit/audit.service.js';
import { Problem } from '../http/problem.js';
import type { Account } from '../people/account.table.js';
import { mayBeOneOfTwo, refuseUnlessMay } from '../people/permission.js';
import { agreementTable, type Proposal, proposalTable } from './proposal.table.js';
import { type ShownProposal, SignaturesService, signaturesNeeded } from './signatures.service.js';

export type { ShownProposal } from './signatures.service.js';

/** Does what was agreed, in the transaction of the last agreement; `agreed` are those whose agreement counts. */
export type CarryOut = (
  transaction: EntityManager,
  payload: Readonly<Record<string, unknown>>,
  by: Account,
  agreed: readonly Account[],
) => Promise<void>;

type NewProposal = Pick<Proposal, 'carriedOutBy' | 'act' | 'subject' | 'payload'>;

/** Acts of the permission table marked "needs a second person". */
@Injectable()
export class ProposalsService {
  private readonly carriers = new Map<string, CarryOut>();

  constructor(
    private readonly database: DataSource,
    private readonly signatures: SignaturesService,
    private readonly audit: AuditService,
  ) {}

  /** A feature says at start-up how its proposals are carried out. */
  register(name: string, carryOut: CarryOut): void {
    this.carriers.set(name, carryOut);
  }

  /**
   * Proposing counts as the proposer's agreement. The same proposal again is the one that is open; from a second person
   * who may agree, it is their agreement to it.
   */
  async propose(proposal: NewProposal, by: Account): Promise<ShownProposal> {
    const open = await this.openOn(this.database.manager, proposal);
    const ofAnother = open.find((each) => each.proposedBy !== by.id && isSame(each, proposal));
    if (ofAnother !== undefined && mayBeOneOfTwo(by, proposal.act)) return this.agree(ofAnother.id, by);
    return this.database.transaction(async (transaction) => {
      const stillOpen = await this.openOn(transaction, proposal);
      const same = stillOpen.find((each) => each.proposedBy === by.id && isSame(each, proposal));
      if (same !== undefined) return this.signatures.shown(transaction, same);
      const [inserted] = (
        await transaction.insert(proposalTable, {
          ...proposal,
          payload: proposal.payload as object,
          proposedBy: by.id,
        })
      ).identifiers;
      const written = await transaction.findOneByOrFail(proposalTable, { id: inserted?.id as string });
      await transaction.insert(agreementTable, { proposalId: written.id, accountId: by.id });
      await this.audit.record(transaction, by, 'proposed', written.subject, { proposal: written.id });
      return this.signatures.shown(transaction, written);
    });
  }

  /** In the transaction that settles a thing: whatever else was proposed on it falls away. */
  async dropOthers(
    transaction: EntityManager,
    on: Pick<Proposal, 'carriedOutBy' | 'subject'>,
    isOnIt: (payload: Proposal['payload']) => boolean,
  ): Promise<void> {
    const open = await this.openOn(transaction, on);
    const ids = open.filter(({ payload }) => isOnIt(payload)).map(({ id }) => id);
    if (ids.length > 0)
      await transaction.update(proposalTable, ids, { state: 'withdrawn', settledAt: new Date() });
  }

  private openOn(
    manager: EntityManager,
    { carriedOutBy, subject }: Pick<Proposal, 'carriedOutBy' | 'subject'>,
  ): Promise<Proposal[]> {
    return manager.findBy(proposalTable, { state: 'open', carriedOutBy, subject });
  }

  async listOpen(): Promise<readonly ShownProposal[]> {
    const open = await this.database
      .getRepository(proposalTable)
      .find({ where: { state: 'open' }, order: { proposedAt: 'ASC' } });
    return Promise.all(open.map((proposal) => this.signatures.shown(this.database.manager, proposal)));
  }

  async get(id: string): Promise<ShownProposal> {
    return this.signatures.shown(this.database.manager, await found(this.database.manager, id));
  }

  /** In force as soon as two different people with the right have put their names to it. */
  agree(id: string, by: Account): Promise<ShownProposal> {
    return this.database.transaction(async (transaction) => {
      const proposal = await found(transaction, id, 'locked');
      refuseNonSecond(by, proposal.act);
      if (proposal.state === 'withdrawn') throw settled(proposal);
      if (proposal.state === 'in force') return this.signatures.shown(transaction, proposal);
      await transaction
        .createQueryBuilder()
        .insert()
        .into(agreementTable)
        .values({ proposalId: id, accountId: by.id })
        .orIgnore() // agreeing twice is agreeing once
        .execute();
      await this.audit.record(transaction, by, 'agreed to', proposal.subject, { proposal: id });
      const agreed = await this.signatures.countedFor(transaction, proposal);
      if (agreed.length >= signaturesNeeded) await this.carryOut(transaction, proposal, by, agreed);
      return this.signatures.shown(transaction, await found(transaction, id));
    });
  }

  withdraw(id: string, by: Account): Promise<void> {
    return this.database.transaction(async (transaction) => {
      const proposal = await found(transaction, id, 'locked');
      if (proposal.proposedBy !== by.id) refuseNonSecond(by, proposal.act);
      if (proposal.state === 'withdrawn') return;
      if (proposal.state === 'in force') throw settled(proposal);
      await transaction.update(proposalTable, id, { state: 'withdrawn', settledAt: new Date() });
      await this.audit.record(transaction, by, 'withdrew', proposal.subject, { proposal: id });
    });
  }

  private async carryOut(
    transaction: EntityManager,
    proposal: Proposal,
    by: Account,
    agreed: readonly Account[],
  ): Promise<void> {
    const carryOut = this.carriers.get(proposal.carriedOutBy);
    if (carryOut === undefined) throw new Error(`nobody carries out ${proposal.carriedOutBy}`);
    await carryOut(transaction, proposal.payload, by, agreed);
    await transaction.update(proposalTable, proposal.id, { state: 'in force', settledAt: new Date() });
  }
}

const found = async (transaction: EntityManager, id: string, lock?: 'locked'): Promise<Proposal> => {
  const proposal = await transaction.findOne(proposalTable, {
    where: { id },
    ...(lock === undefined ? {} : { lock: { mode: 'pessimistic_write' } }),
  });
  if (proposal !== null) return proposal;
  throw new Problem('not-found', `There is no proposal ${id}. Look among those that wait for a signature.`);
};

const isSame = (open: Proposal, { payload }: NewProposal): boolean =>
  isDeepStrictEqual(open.payload, payload);

const refuseNonSecond = (by: Account, act: PermittedAct): void => {
  if (!mayBeOneOfTwo(by, act)) refuseUnlessMay(by, act, { to: 'decide' });
};

const settled = ({ subject, state }: Proposal): Problem =>
  new Problem('conflict', `The proposal on ${subject} is ${state} already. Make a new one.`);
