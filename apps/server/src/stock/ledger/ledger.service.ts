import { isDeepStrictEqual } from 'node:util';
import { applyMovement, type LedgerState, type Movement, replay, subjectsOf } from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager, QueryFailedError } from 'typeorm';
import { type Actor, theProgram } from '../../audit/audit.service.js';
import { Problem } from '../../http/problem.js';
import { correctedBy, loadSlice } from '../figures/slice.js';
import { type StockRows, stockRows } from '../figures/stock-rows.js';
import { goAlone, takeCorrected, takeTurns } from './turns.js';
import { clearStock, insertMovements, writeStock } from './write-stock.js';

/** What became of a movement that was sent in. */
export interface Appended {
  readonly movement: Movement;
  /** False: it was there already. */
  readonly isNew: boolean;
  /** What it leaves to be looked at. */
  readonly raised: StockRows['raised'];
}

/** What else changes with a movement, in the same transaction. */
export interface Follower {
  readonly concerns: (movement: Movement) => boolean;
  /** Takes whatever turn it needs, before the stock's own turns are taken. */
  readonly before: (transaction: EntityManager) => Promise<unknown>;
  readonly after: (transaction: EntityManager, movement: Movement, by: Actor) => Promise<void>;
}

/** The one way into the ledger: a movement, and with it the stock that follows from it. */
@Injectable()
export class LedgerService {
  private readonly followers: Follower[] = [];

  constructor(private readonly database: DataSource) {}

  /** At start-up: what another feature does with every new movement that concerns it. */
  follow(follower: Follower): void {
    this.followers.push(follower);
  }

  /** In a transaction of its own, repeated where two of them waited for each other. */
  async appendAlone(movement: Movement, by: Actor): Promise<Appended> {
    for (let left = 5; ; left--) {
      try {
        return await this.database.transaction((transaction) => this.append(transaction, movement, by));
      } catch (error) {
        if (!isDeadlock(error) || left === 0) throw error;
      }
    }
  }

  /** The same id is the same movement: sent again it changes nothing. */
  async append(transaction: EntityManager, movement: Movement, by: Actor): Promise<Appended> {
    const followers = this.followers.filter(({ concerns }) => concerns(movement));
    for (const { before } of followers) await before(transaction);
    const slice = await readInTurn(transaction, movement);
    const known = slice.find(({ id }) => id === movement.id);
    if (known !== undefined) return { movement: sameOrRefused(known, movement), isNew: false, raised: [] };
    const before = replay(slice);
    const rows = stockRows(before, applyMovement(before, movement));
    const kept = (await writeStock(transaction, rows, { movement, by }))!;
    for (const { after } of followers) await after(transaction, kept, by);
    return { movement: kept, isNew: true, raised: rows.raised };
  }

  /** The first movements of an empty ledger. They are of no account: nobody here wrote them. */
  async open(transaction: EntityManager, movements: readonly Movement[]): Promise<void> {
    for (let at = 0; at < movements.length; at += 5000) {
      const piece = { movements: movements.slice(at, at + 5000) };
      await transaction.query(`${insertMovements} on conflict (id) do nothing`, [
        JSON.stringify(piece),
        theProgram.id,
      ]);
    }
    await this.rebuild(transaction);
  }

  /** Makes the stock anew from every movement. */
  async rebuild(transaction: EntityManager): Promise<void> {
    await goAlone(transaction);
    await clearStock(transaction);
    await writeStock(transaction, stockRows(replay([]), await this.readAll(transaction)));
  }

  async readAll(transaction: EntityManager): Promise<LedgerState> {
    const rows: readonly { readonly data: Movement }[] = await transaction.query(
      'select data from movements',
    );
    return replay(rows.map(({ data }) => data));
  }
}

/** Waits for the turn of whatever the movement is about, then reads it: nobody else changes it from then on. */
const readInTurn = async (transaction: EntityManager, movement: Movement): Promise<readonly Movement[]> => {
  await takeCorrected(transaction, movement);
  const chain = await correctedBy(transaction, movement);
  const subjects = subjectsOf(movement, (id) => chain.get(id));
  const root = [...chain.values()].at(-1)!;
  for (;;) {
    const isTaken = await takeTurns(transaction, { movement, root }, subjects);
    const slice = await loadSlice(transaction, subjects, { ids: [...chain.keys()], alike: root });
    if (isTaken(slice)) return slice.movements;
  }
};

/** When it was received is the server's word, not the sender's. */
const sameOrRefused = (known: Movement, sent: Movement): Movement => {
  if (isDeepStrictEqual({ ...known, receivedAt: '' }, { ...sent, receivedAt: '' })) return known;
  throw new Problem(
    'conflict',
    `Movement ${sent.id} is in the ledger already and says something else. Give a new movement a new id; to take one back, correct it.`,
  );
};

const isDeadlock = (error: unknown): boolean =>
  error instanceof QueryFailedError && (error.driverError as { code?: string }).code === '40P01';
