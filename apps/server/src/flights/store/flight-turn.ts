import type { EntityManager } from 'typeorm';

/** Whoever changes flights does so one after the other; taken before any turn of the stock, so that no two wait for each other. */
export const takeFlightTurn = (transaction: EntityManager): Promise<unknown> =>
  transaction.query('select pg_advisory_xact_lock(872364004)');
