import type { ToldProgress } from '@drumline/routing/threads';
import { printNumber } from '@drumline/units';
import { percent } from './words.js';

/**
 * "a: 12.3 s  best 52,671 cr  bound 52,120 cr  gap at most 1.05 %  (search)". Money in cents. Figures that are told
 * again say from when they are: "(search, as of 11.2 s)".
 */
export function progressText(name: string, progress: ToldProgress, currency: string): string {
  const money = (cents: number | null) =>
    cents === null || !Number.isFinite(cents) ? '-' : `${printNumber(cents / 100)} ${currency}`;
  const told = progress.bound !== null && progress.bound > 0;
  const asOf =
    progress.figuresFrom === progress.seconds ? '' : `, as of ${printNumber(progress.figuresFrom, 1)} s`;
  const gap = progress.gap === null || !told ? '' : `  gap at most ${percent(progress.gap, 2)}`;
  return `${name}: ${printNumber(progress.seconds, 1)} s  best ${money(progress.best)}  bound ${told ? money(progress.bound) : '-'}${gap}  (${progress.stage}${asOf})`;
}

/** A line on standard error that is written over while work goes on; one line every few seconds where it is no terminal. */
export function progressLine(stream: NodeJS.WriteStream): { show(text: string): void; end(): void } {
  const terminal = stream.isTTY;
  let shown = 0;
  return {
    show(text) {
      const now = performance.now();
      if (now - shown < (terminal ? 100 : 2000)) return;
      shown = now;
      stream.write(terminal ? `\r\u001b[K${text.slice(0, stream.columns - 1)}` : `${text}\n`);
    },
    end() {
      if (terminal && shown > 0) stream.write('\r\u001b[K');
    },
  };
}
