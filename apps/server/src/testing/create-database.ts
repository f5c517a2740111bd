import pg from 'pg';

/** Makes a database on a server and returns its address. */
export const createDatabase = async (serverUrl: string, name: string): Promise<string> => {
  const client = new pg.Client({ connectionString: serverUrl });
  await client.connect();
  try {
    await client.query(`create database ${pg.escapeIdentifier(name)}`);
  } finally {
    await client.end();
  }
  const url = new URL(serverUrl);
  url.pathname = `/${name}`;
  return url.href;
};
