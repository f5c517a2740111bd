const steps = ['▁', '▂', '▃', '▄', '▅', '▆', '▇', '█'];

/**
 * One character a day, from the opening: the height is the level against the capacity, `m` stands for a day
 * below minimum, `c` for one below critical, `0` for one at or below nothing.
 */
export function levelGraph(
  levels: readonly number[],
  limits: { readonly minimum: number; readonly critical: number; readonly capacity: number },
): string {
  return levels
    .map((level) => {
      if (level <= 0 && limits.minimum > 0) return '0';
      if (level < limits.critical) return 'c';
      if (level < limits.minimum) return 'm';
      const share = Math.min(1, level / Math.max(1, limits.capacity));
      return steps[Math.min(steps.length - 1, Math.floor(share * steps.length))];
    })
    .join('');
}
