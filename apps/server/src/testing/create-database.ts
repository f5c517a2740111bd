import pg from 'pg';

/** Makes a database on a server, empty or as a copy of another one, and returns its address. */
export const createDatabase = (serverUrl: string, name: string, template = 'template1'): Promise<string> =>
  onServer(serverUrl, async (client) => {
    await client.query(
      `create database ${pg.escapeIdentifier(name)} template ${pg.escapeIdentifier(template)}`,
    );
    return addressOf(serverUrl, name);
  });

/** Makes the database once, however many ask for it at the same time; until it is filled it has another name. */
export const createOnce = (
  serverUrl: string,
  name: string,
  fill: (databaseUrl: string) => Promise<void>,
): Promise<void> =>
  onServer(serverUrl, async (client) => {
    await client.query('select pg_advisory_lock(872364009)');
    const known = await client.query('select 1 from pg_database where datname = $1', [name]);
    if (known.rowCount !== 0) return;
    const unfinished = `${name}_unfinished`;
    await fill(await createDatabase(serverUrl, unfinished));
    await client.query(
      `alter database ${pg.escapeIdentifier(unfinished)} rename to ${pg.escapeIdentifier(name)}`,
    );
  });

const onServer = async <T>(serverUrl: string, act: (client: pg.Client) => Promise<T>): Promise<T> => {
  const client = new pg.Client({ connectionString: serverUrl });
  await client.connect();
  return act(client).finally(() => client.end());
};

const addressOf = (serverUrl: string, name: string): string => {
  const url = new URL(serverUrl);
  url.pathname = `/${name}`;
  return url.href;
};
