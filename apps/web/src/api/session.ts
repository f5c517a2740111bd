import { type Level, type PermittedAct, permittedActs, roles } from '@drumline/contract';
import type { MeAnswer } from '@drumline/contract/answers';
import { z } from 'zod';
import { partOf } from './part-of.js';
import { createStore, useStore } from './store.js';

export const meSchema = partOf<MeAnswer>()(
  z.object({
    id: z.string(),
    name: z.string(),
    fullName: z.string(),
    roles: z.array(z.enum(roles)),
    crew: z.string().nullable(),
    programmes: z.array(z.string()),
    mustChangePassword: z.boolean(),
    may: z.array(
      z.object({
        act: z.enum(permittedActs as readonly [PermittedAct, ...PermittedAct[]]),
        level: z.enum(['none', 'view', 'enter', 'decide']),
        own: z.boolean(),
        second: z.boolean(),
        limit: z.string().nullable(),
      }),
    ),
    csrfToken: z.string(),
  }),
);

export type Me = z.output<typeof meSchema>;

/** `expired`: the session ended while pages were open; they stay, and what was sent waits for the person. */
export type Session =
  | { readonly state: 'unknown' }
  | { readonly state: 'signed out' }
  | { readonly state: 'signed in'; readonly me: Me }
  | { readonly state: 'expired'; readonly me: Me };

export const session = createStore<Session>({ state: 'unknown' });

export const useSession = (): Session => useStore(session);

export const csrfToken = (): string => {
  const now = session.get();
  return 'me' in now ? now.me.csrfToken : '';
};

/** Takes note of who signed in. Somebody else than before gets a page without the other's work on it. */
export const signedInAs = (me: Me): void => {
  const before = session.get();
  if ('me' in before && before.me.id !== me.id) {
    window.location.reload();
    return;
  }
  session.set({ state: 'signed in', me });
};

/** The server does not know this session any more. */
export const sessionEnded = (): void => {
  const before = session.get();
  if (before.state === 'signed in') session.set({ state: 'expired', me: before.me });
  else if (before.state === 'unknown') session.set({ state: 'signed out' });
};

/** Resolves when somebody is signed in again; true: the same session goes on. */
export const signedInAgain = (): Promise<boolean> =>
  new Promise((resolve) => {
    const stop = session.subscribe(() => {
      const { state } = session.get();
      if (state !== 'signed in' && state !== 'signed out') return;
      stop();
      resolve(state === 'signed in');
    });
  });

/** The person at the page. Only for components below the frame, which is there when somebody is signed in. */
export const useMe = (): Me => {
  const now = useSession();
  if (!('me' in now)) throw new Error('nobody is signed in');
  return now.me;
};

/** Everybody but a customer's people, who are told of their own things only. */
export const isOfTheOperator = ({ roles }: Pick<Me, 'roles'>): boolean =>
  roles.some((role) => role !== 'field leader');

const levels: readonly Level[] = ['none', 'view', 'enter', 'decide'];

/**
 * Whether a button is shown at all. The server has the last word: limits and a second person are asked there, and its
 * refusal says why.
 */
export const useMay = (): ((act: PermittedAct, to: Level) => boolean) => {
  const me = useMe();
  return (act, to) => me.may.some((cell) => reaches(cell, act, to));
};

/** Of everybody's things, not of one's own only: what a whole page shows. */
export const mayOfAll = ({ may }: Pick<Me, 'may'>, act: PermittedAct, to: Level): boolean =>
  may.some((cell) => !cell.own && reaches(cell, act, to));

/** Of one's own things only: a crew's flights, a customer's programme. */
export const mayOfOwnOnly = ({ may }: Pick<Me, 'may'>, act: PermittedAct): boolean =>
  may.some((cell) => cell.act === act && cell.own) && !mayOfAll({ may }, act, 'view');

const reaches = (cell: Me['may'][number], act: PermittedAct, to: Level): boolean =>
  cell.act === act && levels.indexOf(cell.level) >= levels.indexOf(to);
