import type { NamedDrum } from './named-load.js';

type Drum = Pick<NamedDrum, 'number' | 'held'>;

/**
 * "Batch J27-041 is held: water found. Aboard: 0523. Set aside for it: 0524." of each hold on drums of a load; null: none is
 * held. `notAboard`: numbers of drums that nobody has loaded yet.
 */
export function heldAboardWords(
  drums: readonly Drum[],
  notAboard: ReadonlySet<string> = new Set(),
): string | null {
  const holds = [...new Set(drums.flatMap(({ held }) => held ?? []))];
  if (holds.length === 0) return null;
  return holds
    .flatMap((words) => {
      const numbers = drums.filter(({ held }) => held === words).map(({ number }) => number);
      if (!words.startsWith('Batch')) return [words];
      return [
        words,
        ...listed(
          'Aboard',
          numbers.filter((number) => !notAboard.has(number)),
        ),
        ...listed(
          'Set aside for it',
          numbers.filter((number) => notAboard.has(number)),
        ),
      ];
    })
    .join(' ');
}

const listed = (where: string, numbers: readonly string[]): readonly string[] =>
  numbers.length === 0 ? [] : [`${where}: ${numbers.join(', ')}.`];
