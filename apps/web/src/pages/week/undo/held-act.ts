import { ApiProblem, createStore, keptBack, useStore } from '../../../api/index.js';
import type { WeekFlight } from '../week-read.js';
import type { ActName, HeldName } from './opposing-act.js';

/** So long an act that nothing takes back waits on this page before it is sent. */
export const heldSeconds = 6;

/** An act that is not sent yet. */
export interface Held {
  readonly act: HeldName;
  readonly flight: string;
  /** What was typed with it: shown again where it is refused. */
  readonly reason: string;
  readonly secondsLeft: number;
  readonly send: () => Promise<unknown>;
}

/** What was done last, and what came of it. */
export type Done = { readonly flight: string } & (
  | { readonly kind: 'sent'; readonly act: ActName }
  | { readonly kind: 'taken back'; readonly act: HeldName }
  | {
      readonly kind: 'refused';
      readonly act: HeldName;
      readonly reason: string;
      readonly problem: ApiProblem;
    }
);

export const held = createStore<Held | null>(null);
export const lastDone = createStore<Done | null>(null);
let timer: ReturnType<typeof setInterval> | undefined;

export const useHeld = (): Held | null => useStore(held);
export const useLastDone = (): Done | null => useStore(lastDone);

/** An act that base has taken. A refusal that nobody has seen yet stays in its place. */
export const wasSent = (act: ActName, flight: string): void => {
  if (lastDone.get()?.kind !== 'refused') lastDone.set({ kind: 'sent', act, flight });
};

/** Keeps an act back for some seconds. One that is still kept back is sent first: two never wait at once. */
export const holdBack = (
  act: HeldName,
  { id: flight, reason }: Pick<WeekFlight, 'id'> & Pick<Held, 'reason'>,
  send: () => Promise<unknown>,
): void => {
  void sendNow();
  held.set({ act, flight, reason, send, secondsLeft: heldSeconds });
  keptBack.set({ sendNow });
  timer = setInterval(tick, 1000);
  window.addEventListener('beforeunload', warn);
};

/** Takes back what was not sent: base never hears of it. */
export const takeBack = (): void => {
  const now = release();
  if (now !== null) lastDone.set({ kind: 'taken back', act: now.act, flight: now.flight });
};

/** Sends what is kept back without waiting longer. */
export const sendNow = async (): Promise<void> => {
  const now = release();
  if (now === null) return;
  const { act, flight, reason, send } = now;
  try {
    await send();
    wasSent(act, flight);
  } catch (error) {
    if (!(error instanceof ApiProblem)) throw error;
    lastDone.set({ kind: 'refused', act, flight, reason, problem: error });
  }
};

/** The person has seen what came of it. */
export const forget = (): void => lastDone.set(null);

const tick = (): void => {
  const now = held.get();
  if (now === null || now.secondsLeft <= 1) void sendNow();
  else held.set({ ...now, secondsLeft: now.secondsLeft - 1 });
};

/** What was kept back is so no longer. */
const release = (): Held | null => {
  const now = held.get();
  clearInterval(timer);
  held.set(null);
  keptBack.set(null);
  window.removeEventListener('beforeunload', warn);
  return now;
};

/** The browser asks before it closes a page that has something to send. */
const warn = (event: BeforeUnloadEvent): void => event.preventDefault();
