import 'reflect-metadata';
import { AuditService } from './audit/audit.service.js';
import { ConfigError } from './config.js';
import { openDatabase } from './database/data-source.js';
import { openKeptDatabase } from './embedded-postgres/open-embedded-database.js';
import { type Running, runEntry } from './entry.js';
import { PeopleService } from './people/people.service.js';
import { SessionsService } from './people/sessions.service.js';

// npm run let-in -- <sign-in name>: the way back where no operations manager can sign in, for whoever runs the machine.
const letIn = async (running: Running): Promise<void> => {
  const name = process.argv[2];
  if (name === undefined) throw new ConfigError('Name the account: npm run let-in -- administrator.');
  const { config, onStop } = running;
  const databaseUrl = config.databaseUrl ?? (await openKeptDatabase(running, 'to let anybody into'));
  const database = await openDatabase(databaseUrl, 2);
  onStop(() => database.destroy());
  const people = new PeopleService(database, new SessionsService(database), new AuditService(database));
  const password = await people.letIn(name);
  if (password === null) throw new ConfigError(`There is no account ${name}. Give a sign-in name.`);
  process.stderr.write(`\nSign in as ${name} with the one-time password ${password}\n\n`);
};

await runEntry(letIn, { once: true });
