import { roles } from '@drumline/contract';
import { z } from 'zod';
import { createStore, useStore } from '../api/store.js';
import { ask, hasToken, readAs, type Said, setToken } from './ask.js';
import { fact, keepFact, kept } from './kept.js';
import { waitingEntries } from './outbox.js';

const personSchema = z.object({
  id: z.string(),
  name: z.string(),
  fullName: z.string(),
  roles: z.array(z.enum(roles)),
  crew: z.string().nullable(),
  /** Signed in with a one-time password: base answers nothing else before. */
  mustChangePassword: z.boolean(),
  csrfToken: z.string(),
});

/** Whose phone it is. The token of the session is never kept. */
export type Person = Omit<z.output<typeof personSchema>, 'csrfToken'>;

/** `ended`: base does not know the session any more; what is on the phone stays, and waits. */
export type Who =
  | { readonly state: 'not read' }
  | { readonly state: 'nobody' }
  | { readonly state: 'here'; readonly person: Person; readonly ended: boolean };

export const who = createStore<Who>({ state: 'not read' });

export const useWho = (): Who => useStore(who);

/** Without a line: who signed in last. */
export const readWho = async (): Promise<void> => {
  const person = await fact<Person>('person');
  who.set(person === undefined ? { state: 'nobody' } : { state: 'here', person, ended: false });
};

/** Asks base who is signed in. False: nobody, or no line. */
export const askWho = async (): Promise<boolean> => {
  const said = await ask('GET', '/api/me');
  if (said.kind === 'signed out') sessionEnded();
  return said.kind === 'answer' && isHere(said.body);
};

export const signIn = async (name: string, password: string): Promise<Said> => {
  const said = await ask('POST', '/api/sign-in', { name, password });
  if (said.kind === 'answer') isHere(said.body);
  return said;
};

/** Why it could not be changed; null: it is. */
export const changePassword = async (current: string, next: string): Promise<string | null> => {
  // After a reload the token of the session is asked for anew.
  const said =
    hasToken() || (await askWho()) ? await ask('PUT', '/api/me/password', { current, next }) : null;
  if (said?.kind === 'refused') return said.words;
  if (said?.kind !== 'answer') return 'Base does not answer. Changing it needs a signal.';
  await askWho();
  return null;
};

export const sessionEnded = (): void => {
  setToken('');
  const now = who.get();
  if (now.state === 'here') who.set({ ...now, ended: true });
};

/** Why the person cannot sign out now; null: signed out. */
export const signOut = async (): Promise<string | null> => {
  const waiting = (await waitingEntries()).length;
  if (waiting > 0) {
    const entries = waiting === 1 ? '1 entry is' : `${waiting} entries are`;
    return `${entries} only on this phone. Send or show them first.`;
  }
  const said = await ask('POST', '/api/sign-out');
  if (said.kind !== 'answer' && said.kind !== 'signed out')
    return 'Base did not hear it, so you are still signed in. Try again when there is a line.';
  // With base is with base; what somebody has to speak about stays.
  await kept.transaction('rw', [kept.reads, kept.facts], async () => {
    await kept.reads.clear();
    await kept.facts.clear();
  });
  setToken('');
  who.set({ state: 'nobody' });
  return null;
};

const isHere = (body: unknown): boolean => {
  const read = readAs(personSchema, body);
  if (read === null) return false;
  const { csrfToken, ...person } = read;
  setToken(csrfToken);
  const before = who.get();
  // Another's flights are not this person's; reports stay, with who wrote them.
  if (before.state === 'here' && before.person.id !== person.id) void kept.reads.clear();
  void keepFact('person', person);
  who.set({ state: 'here', person, ended: false });
  return true;
};
