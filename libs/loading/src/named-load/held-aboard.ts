import type { NamedDrum } from './named-load.js';

/** "Batch J27-041 is held: water found. Aboard: 0523, 0524." of each hold on drums of a load; null: none is held. */
export function heldAboardWords(drums: readonly Pick<NamedDrum, 'number' | 'held'>[]): string | null {
  const holds = [...new Set(drums.flatMap(({ held }) => held ?? []))];
  if (holds.length === 0) return null;
  return holds
    .map((words) => {
      const numbers = drums.filter(({ held }) => held === words).map(({ number }) => number);
      return words.startsWith('Batch') ? `${words} Aboard: ${numbers.join(', ')}.` : words;
    })
    .join(' ');
}
