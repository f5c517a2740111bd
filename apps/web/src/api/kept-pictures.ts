import { session } from './session.js';

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
  const names = (await window.caches?.keys()) ?? [];
  await Promise.all(
    names.filter((each) => each.startsWith(beginning) && each !== name).map((each) => caches.delete(each)),
  );
};

const readAtOf = (kept: Response): number => Number(kept.headers.get('X-Read-At'));
