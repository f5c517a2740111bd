/** The beginning of a sentence: "Soft" of "soft". */
export const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
