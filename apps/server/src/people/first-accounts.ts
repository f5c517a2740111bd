import { randomUUID } from 'node:crypto';
import { type Role, roles } from '@drumline/contract';
import type { DataSource } from 'typeorm';
import { oneTimePassword } from './password.js';
import type { PeopleService } from './people.service.js';
import { personSchema } from './person.schema.js';

const setUp: readonly Role[] = ['operations manager', 'set-up'];

/** Makes the first account of an installation and returns its one-time password, shown this once. */
export const makeAdministrator = async (people: PeopleService, database: DataSource): Promise<string> => {
  const password = oneTimePassword();
  const person = personSchema.parse({ name: 'administrator', fullName: 'Administrator', roles: setUp });
  await people.insert(database.manager, { id: randomUUID(), ...person }, password, true);
  return password;
};

/** Who the demo's people are: crew of the invented territory where a role has "own" flights or programmes. */
const own: Partial<Readonly<Record<Role, { crew?: string; programmes?: string[] }>>> = {
  pilot: { crew: 'FW1' },
  'helicopter crew': { crew: 'H1' },
  'field leader': { programmes: ['P1'] },
};

/** The sign-in name of a role's demo account. */
export const demoName = (role: Role): string => role.replace(' ', '-');

/** Released by two of fuel quality: with one, nobody could see a hold end. */
const seconds: readonly Role[] = ['fuel quality'];

/** Every account of the demo: its sign-in name and its role. */
export const demoPeople: readonly (readonly [name: string, role: Role])[] = [
  ...roles.map((role) => [demoName(role), role] as const),
  ...seconds.map((role) => [`${demoName(role)}-2`, role] as const),
];

/** One account for each role, and a second where the work needs two. A production start never gets here. */
export const makeDemoAccounts = async (
  people: PeopleService,
  database: DataSource,
  password: string,
): Promise<void> => {
  for (const [name, role] of demoPeople) {
    const person = personSchema.parse({
      name,
      fullName: name === demoName(role) ? `Demo ${role}` : `Demo second ${role}`,
      roles: [role],
      ...own[role],
    });
    await people.insert(database.manager, { id: randomUUID(), ...person }, password, false);
  }
};
