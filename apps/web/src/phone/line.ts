import { createStore, useStore } from '../api/store.js';
import { spanWords } from './line-words.js';
import { oddClockMs } from './reporting.js';

/** What the phone knows of base, kept on the phone: a restart without a line goes on from it. */
export interface Heard {
  /** When base last answered, by the phone's clock, ms. */
  readonly phoneMs: number;
  /** The territory's clock less the phone's, ms: a demo has another day than the wall. */
  readonly territoryAheadMs: number;
  /** The server's own clock less the phone's, ms: by so much the phone's clock is off. */
  readonly serverAheadMs: number;
  readonly timeZone: string;
}

export interface Line {
  /** Null: base has never answered this phone. */
  readonly heard: Heard | null;
  /** Whether base answered when it was last asked. */
  readonly withBase: boolean;
}

const name = 'drumline.phone.heard';

const keptHeard = (): Heard | null => {
  const text = localStorage.getItem(name);
  return text === null ? null : (JSON.parse(text) as Heard);
};

export const line = createStore<Line>({ heard: keptHeard(), withBase: false });

export const useLine = (): Line => useStore(line);

/** Base has answered; `clocks`: and has said what time it is. */
export const hasHeard = (clocks?: Omit<Heard, 'phoneMs'>): void => {
  const before = line.get().heard;
  const of = clocks ?? before;
  if (of === null) {
    line.set({ heard: null, withBase: true });
    return;
  }
  const heard: Heard = { ...of, phoneMs: Date.now() };
  localStorage.setItem(name, JSON.stringify(heard));
  line.set({ heard, withBase: true });
};

export const hasNotHeard = (): void => {
  if (line.get().withBase) line.set({ ...line.get(), withBase: false });
};

/** Now by the territory's clock, as well as the phone can tell. */
export const territoryNow = (): Date => new Date(Date.now() + (line.get().heard?.territoryAheadMs ?? 0));

/** "This phone's clock is 3 h 00 slow."; null: it is right, or nobody has told. */
export const clockWords = (heard: Heard | null): string | null => {
  if (heard === null || Math.abs(heard.serverAheadMs) <= oddClockMs) return null;
  const way = heard.serverAheadMs > 0 ? 'slow' : 'fast';
  return `This phone's clock is ${spanWords(Math.abs(heard.serverAheadMs) + 30_000)} ${way}. Base's time is used.`;
};
