/** "1 drum", "4 drums". */
export const countWords = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;

/** "0451", "0451 and 0452", "0450, 0451 and 0452". */
export const listWords = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
