import { keptBack } from './kept-back.js';
import { forgetPictures, keptWho } from './kept-pictures.js';
import { ApiProblem, asProblem, outOfReach } from './problem.js';
import { send } from './send.js';
import { type Me, meSchema, session, signedInAs } from './session.js';

/**
 * At the first load: is somebody signed in on this machine? While base is silent it is whoever was here last, whose pictures
 * are kept; base has the word as soon as it answers.
 */
export const findWhoIsHere = async (): Promise<void> => {
  try {
    signedInAs(meSchema.parse((await send('GET', '/api/me')).body));
  } catch (error) {
    const problem = asProblem(error);
    if (problem.kind === 'not-signed-in') session.set({ state: 'signed out' });
    else {
      const last = problem.isOutOfReach && session.get().state === 'unknown' ? await keptWho() : undefined;
      if (last !== undefined) signedInAs(last);
      throw problem.isOutOfReach ? outOfReach() : problem;
    }
  }
};

export const signIn = async (name: string, password: string): Promise<Me> => {
  const me = meSchema.parse((await send('POST', '/api/sign-in', { name, password })).body);
  signedInAs(me);
  return me;
};

/** Everything on the page goes with the person. */
export const signOut = async (): Promise<void> => {
  await keptBack.get()?.sendNow();
  await send('POST', '/api/sign-out').catch((error: unknown) => {
    if (!(error instanceof ApiProblem) || error.kind !== 'not-signed-in') throw error;
  });
  await forgetPictures();
  window.location.assign('/');
};

export const changePassword = async (current: string, next: string): Promise<void> => {
  await send('PUT', '/api/me/password', { current, next });
  signedInAs(meSchema.parse((await send('GET', '/api/me')).body));
};
