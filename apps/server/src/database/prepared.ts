import { createHash } from 'node:crypto';
import type { Pool } from 'pg';
import { type EntityManager, QueryFailedError } from 'typeorm';

/** A question that is asked at nearly every request: each connection plans it once. */
export interface Prepared {
  readonly name: string;
  readonly text: string;
}

export const prepared = (text: string): Prepared => ({
  name: createHash('sha256').update(text).digest('base64url').slice(0, 16),
  text,
});

/** In the manager's transaction, or on any free connection where it has none. Errors are those of `manager.query`. */
export const ask = async <Row>(
  manager: EntityManager,
  { name, text }: Prepared,
  values: readonly unknown[] = [],
): Promise<readonly Row[]> => {
  const connection = await connectionOf(manager);
  try {
    const { rows } = await connection.query({ name, text, values: [...values] });
    return rows as readonly Row[];
  } catch (error) {
    throw new QueryFailedError(text, [...values], error as Error);
  }
};

const connectionOf = async ({ queryRunner, dataSource }: EntityManager): Promise<Pick<Pool, 'query'>> => {
  if (queryRunner !== undefined) return (await queryRunner.connect()) as Pick<Pool, 'query'>;
  return (dataSource.driver as unknown as { readonly master: Pool }).master;
};
