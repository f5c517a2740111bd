import type { Line } from './line.js';

/** An answer older than this, ms, says nothing of now: base is asked by the minute. */
const freshMs = 90_000;

/** "With base 06:10", by when it last answered; "Not with base 1 h 37", since then. */
export const lineWords = ({ heard, withBase }: Line, now: Date, timeOf: (at: Date) => string): string => {
  if (heard === null) return 'Not with base yet';
  const heardAt = new Date(heard.phoneMs + heard.territoryAheadMs);
  const sinceMs = now.getTime() - heardAt.getTime();
  if (withBase && sinceMs <= freshMs) return `With base ${timeOf(heardAt)}`;
  return `Not with base ${sinceMs < 60_000 ? 'now' : spanWords(sinceMs)}`;
};

/** "1 h 22", "5 min". */
export const spanWords = (ms: number): string => {
  const minutes = Math.max(0, Math.floor(ms / 60_000));
  if (minutes < 60) return `${minutes} min`;
  const hours = Math.floor(minutes / 60);
  if (hours >= 48) return `${Math.floor(hours / 24)} days`;
  return `${hours} h ${String(minutes % 60).padStart(2, '0')}`;
};
