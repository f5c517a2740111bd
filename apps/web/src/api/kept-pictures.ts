import { type Me, meSchema, session } from './session.js';

/**
 * The last answer to each question, kept in the browser's own store of answers for the person who read it: what a page shows
 * that is opened while base is out of reach. Without HTTPS a browser has no such store; then nothing is kept.
 */
interface KeptPicture {
  readonly body: unknown;
  /** By this machine's clock, ms. */
  readonly readAt: number;
}

const beginning = 'drumline.pictures.';
const keptMs = 7 * 86_400_000;

const personNow = (): string => {
  const now = session.get();
  return 'me' in now ? now.me.id : '';
};

const store = (): Promise<Cache> | undefined => window.caches?.open(beginning + personNow());

const addressOf = (question: readonly unknown[]): string =>
  `/pictures/${encodeURIComponent(JSON.stringify(question))}`;

export const keepPicture = async (question: readonly unknown[], body: unknown): Promise<void> => {
  const headers = { 'X-Read-At': String(Date.now()) };
  // A full disk: the page goes on without.
  await (await store())?.put(addressOf(question), Response.json(body, { headers })).catch(() => {});
};

export const keptPicture = async (question: readonly unknown[]): Promise<KeptPicture | undefined> => {
  const kept = await (await store())?.match(addressOf(question));
  return kept === undefined ? undefined : { body: await kept.json(), readAt: readAtOf(kept) };
};

export const forgetPicture = async (question: readonly unknown[]): Promise<void> => {
  await (await store())?.delete(addressOf(question));
};

const who = ['who'];

/** Whose pictures these are, so that they can be shown before base says who is here; the key of the session is not kept. */
export const keepWho = (me: Me): Promise<void> => keepPicture(who, { ...me, csrfToken: '' });

/** The session is over: the pictures wait until the same person has signed in again. */
export const forgetWho = async (): Promise<void> => {
  for (const name of await ownStores()) await (await caches.open(name)).delete(addressOf(who));
};

export const keptWho = async (): Promise<Me | undefined> => {
  for (const name of await ownStores()) {
    const kept = await (await caches.open(name)).match(addressOf(who));
    if (kept !== undefined && Date.now() - readAtOf(kept) <= keptMs) return meSchema.parse(await kept.json());
  }
  return undefined;
};

/** Of whoever was here before, and of questions that nobody asks any more. */
export const forgetOldPictures = async (): Promise<void> => {
  await forgetAllBut(beginning + personNow());
  const own = await store();
  for (const asked of (await own?.keys()) ?? []) {
    const kept = await own!.match(asked);
    if (kept !== undefined && Date.now() - readAtOf(kept) > keptMs) await own!.delete(asked);
  }
};

/** They go with the person. */
export const forgetPictures = (): Promise<void> => forgetAllBut('');

const forgetAllBut = async (name: string): Promise<void> => {
  const others = (await ownStores()).filter((each) => each !== name);
  await Promise.all(others.map((each) => caches.delete(each)));
};

const ownStores = async (): Promise<readonly string[]> =>
  ((await window.caches?.keys()) ?? []).filter((each) => each.startsWith(beginning));

const readAtOf = (kept: Response): number => Number(kept.headers.get('X-Read-At'));
