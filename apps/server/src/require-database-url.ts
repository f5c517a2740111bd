import { type Config, ConfigError } from './config.js';

export const requireDatabaseUrl = ({ databaseUrl }: Config): string => {
  if (databaseUrl !== undefined) return databaseUrl;
  throw new ConfigError(
    'DATABASE_URL is missing: give the address of a PostgreSQL server, or run `npm start`, which brings its own.',
  );
};
