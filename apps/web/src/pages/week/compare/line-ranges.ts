/** "lines 1 to 4, 6" of line numbers in order; empty: no line. */
export const lineRanges = (numbers: readonly number[]): string => {
  const runs: [first: number, last: number][] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run !== undefined && run[1] === number - 1) run[1] = number;
    else runs.push([number, number]);
  }
  if (runs.length === 0) return '';
  const words = runs.map(([first, last]) =>
    last === first ? `${first}` : last === first + 1 ? `${first}, ${last}` : `${first} to ${last}`,
  );
  return `${numbers.length === 1 ? 'line' : 'lines'} ${words.join(', ')}`;
};
