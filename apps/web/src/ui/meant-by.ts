/** What is kept, and the words by which it is found and shown. */
export type Option = readonly [value: string, words: string];

/** The options that a typed text may mean: the one that it names in full, else all whose words have it in them. */
export const meantBy = (typed: string, options: readonly Option[]): readonly Option[] => {
  const text = typed.trim().toLowerCase();
  if (text === '') return [];
  const named = options.filter((option) => option.some((word) => word.toLowerCase() === text));
  return named.length > 0 ? named : options.filter(([, words]) => words.toLowerCase().includes(text));
};
