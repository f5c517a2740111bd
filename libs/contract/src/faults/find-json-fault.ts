/** Where a text stops being JSON; line and column count from 1. */
export interface JsonFault {
  readonly line: number;
  readonly column: number;
  readonly problem: string;
}

class NotJson extends Error {
  constructor(
    readonly offset: number,
    problem: string,
  ) {
    super(problem);
  }
}

/**
 * The first place at which a text breaks the grammar of RFC 8259. Engines differ in whether and how they say
 * the position, so that a text that `JSON.parse` refused is read once more here.
 */
export const findJsonFault = (text: string): JsonFault => {
  try {
    const end = space(text, value(text, space(text, 0)));
    if (end < text.length) throw new NotJson(end, `${glyph(text, end)} after the end of the document`);
    throw new NotJson(end, 'it could not be read');
  } catch (fault) {
    if (!(fault instanceof NotJson)) throw fault;
    const before = text.slice(0, fault.offset).split('\n');
    return { line: before.length, column: before.at(-1)!.length + 1, problem: fault.message };
  }
};

// Each reader takes the offset at which its part starts and returns the offset behind it.

const value = (text: string, at: number): number => {
  if (text[at] === '{') return members(text, at, '}', member);
  if (text[at] === '[') return members(text, at, ']', value);
  if (text[at] === '"') return string(text, at);
  return match(text, at, /(?:true|false|null)\b|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y, 'a value');
};

const members = (
  text: string,
  at: number,
  close: '}' | ']',
  read: (text: string, at: number) => number,
): number => {
  let here = space(text, at + 1);
  if (text[here] === close) return here + 1;
  for (;;) {
    here = space(text, read(text, here));
    if (text[here] === close) return here + 1;
    if (text[here] !== ',')
      throw new NotJson(here, `a comma or ${close} is expected, found ${glyph(text, here)}`);
    const comma = here;
    here = space(text, here + 1);
    if (text[here] === close) throw new NotJson(comma, `a comma too many before ${close}`);
  }
};

const member = (text: string, at: number): number => {
  if (text[at] !== '"')
    throw new NotJson(at, `a field name in double quotes is expected, found ${glyph(text, at)}`);
  const colon = space(text, string(text, at));
  if (text[colon] !== ':') throw new NotJson(colon, `a colon is expected, found ${glyph(text, colon)}`);
  return value(text, space(text, colon + 1));
};

const string = (text: string, at: number): number =>
  match(
    text,
    at,
    /"(?:[^"\\\p{Cc}]|[\x7f-\x9f]|\\(?:["\\/bfnrt]|u[\da-fA-F]{4}))*"/uy,
    'a text in double quotes, on one line',
  );

const match = (text: string, at: number, pattern: RegExp, expected: string): number => {
  pattern.lastIndex = at;
  if (!pattern.test(text)) throw new NotJson(at, `${expected} is expected, found ${glyph(text, at)}`);
  return pattern.lastIndex;
};

const space = (text: string, at: number): number => match(text, at, /[ \t\n\r]*/y, 'space');

const glyph = (text: string, at: number): string =>
  at >= text.length ? 'the end of the text' : JSON.stringify(text.slice(at, at + 12).split('\n')[0]);
