/** Writes JSON where it is asked for, else the lines for people, to standard output. */
export function writeAnswer(
  options: { readonly json?: boolean },
  answer: () => unknown,
  lines: () => readonly string[],
): void {
  process.stdout.write(options.json ? `${JSON.stringify(answer(), null, 2)}\n` : `${lines().join('\n')}\n`);
}
