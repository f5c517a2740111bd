import { randomUUID } from 'node:crypto';
import type { Role } from '@drumline/contract';
import { PeopleService } from '../../people/people.service.js';
import { personSchema } from '../../people/person.schema.js';
import type { Client } from '../../testing/client.js';
import { type TestServer, testPassword } from '../../testing/create-test-server.js';

/** One more person, signed in: where the demo has only one of a role and two are needed. */
export const signInNew = async (
  { app, database, stranger }: TestServer,
  name: string,
  role: Role,
): Promise<Client> => {
  const person = personSchema.parse({ name, fullName: `New ${name}`, roles: [role] });
  await app.get(PeopleService).insert(database.manager, { id: randomUUID(), ...person }, testPassword, false);
  const client = stranger();
  await client.signIn(name, testPassword);
  return client;
};
