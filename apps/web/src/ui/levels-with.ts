/**
 * The one rule by which levels are counted on every page, in words: "with approved and offered flights; 2 later ideas not
 * counted". The server decides what an idea is, and how many there are.
 */
export const levelsWith = (laterIdeas: number): string =>
  laterIdeas === 0
    ? 'with approved and offered flights'
    : `with approved and offered flights; ${laterIdeas} later ${laterIdeas === 1 ? 'idea' : 'ideas'} not counted`;
