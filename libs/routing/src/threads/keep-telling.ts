import type { Progress } from '../plan.js';

/** Progress as it is told on. `seconds` are those since the telling began. */
export interface ToldProgress extends Progress {
  /** When the solver gave these figures; earlier than `seconds` where it has been at work in silence since. */
  readonly figuresFrom: number;
}

/** Milliseconds of silence after which the last figures are told again. */
const SILENCE = 500;

const nothingYet = {
  stage: 'first plan',
  best: Number.POSITIVE_INFINITY,
  bestMoney: Number.POSITIVE_INFINITY,
  bound: null,
  gap: null,
} as const;

/**
 * Tells what a solver in another thread says, and its last figures again whenever it is silent: its own work may block
 * it for seconds, and this thread is free. `clock` in milliseconds. Begins at once; `stop` ends it.
 */
export function keepTelling(tell: (progress: ToldProgress) => void, clock: () => number) {
  const began = clock();
  const elapsed = () => (clock() - began) / 1000;
  let last: ToldProgress = { ...nothingYet, seconds: 0, figuresFrom: 0 };
  const silence = setTimeout(() => {
    tell({ ...last, seconds: elapsed() });
    silence.refresh();
  }, SILENCE);
  return {
    hear(progress: Progress): void {
      const seconds = elapsed();
      last = { ...progress, seconds, figuresFrom: seconds };
      tell(last);
      silence.refresh();
    },
    stop: () => clearTimeout(silence),
  };
}
