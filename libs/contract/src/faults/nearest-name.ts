/** The known name that a mistyped one most likely means; null when none is close (more than a third of it differs). */
export const nearestName = (typed: string, known: Iterable<string>): string | null => {
  const far = Math.max(1, Math.floor(typed.length / 3)) + 1;
  let best: { name: string; edits: number } | null = null;
  for (const name of known) {
    const edits = editsBetween(typed.toLowerCase(), name.toLowerCase());
    if (edits < (best?.edits ?? far)) best = { name, edits };
  }
  return best?.name ?? null;
};

/** Letters to change, add, drop or swap with a neighbour to turn one word into the other. */
const editsBetween = (a: string, b: string): number => {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = last[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row.push(Math.min(change, last[j]! + 1, row[j - 1]! + 1, swapped ? before[j - 2]! + 1 : change));
    }
    before = last;
    last = row;
  }
  return last[b.length]!;
};
