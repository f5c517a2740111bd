import type pg from 'pg';

export interface KeptTable {
  readonly name: string;
  /** Without those that the database works out itself. */
  readonly columns: readonly string[];
}

/**
 * Every table of the program, each after those that it refers to. Not among them: the list of migrations, which a
 * restore makes itself, and the queue, which the database fills again.
 */
export const keptTables = async (client: pg.Client): Promise<readonly KeptTable[]> => {
  const { rows } = await client.query<KeptTable & { readonly refersTo: readonly string[] }>(tablesSql);
  const ordered = new Set<string>();
  while (ordered.size < rows.length) {
    const ready = rows.filter(
      ({ name, refersTo }) => !ordered.has(name) && refersTo.every((other) => ordered.has(other)),
    );
    if (ready.length === 0) throw new Error('tables refer to one another in a circle');
    for (const { name } of ready) ordered.add(name);
  }
  return [...ordered].map((name) => {
    const { columns } = rows.find((row) => row.name === name)!;
    return { name, columns };
  });
};

const tablesSql = `
  select relname as name,
    (select array_agg(attname::text order by attnum) from pg_attribute
     where attrelid = pg_class.oid and attnum > 0 and not attisdropped and attgenerated = '') as columns,
    array(select distinct confrelid::regclass::text from pg_constraint
          where conrelid = pg_class.oid and contype = 'f' and confrelid <> conrelid) as "refersTo"
  from pg_class
  where relnamespace = 'public'::regnamespace and relkind = 'r' and relname <> 'migrations'
  order by relname`;
