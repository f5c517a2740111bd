import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findJsonFault } from './find-json-fault.js';

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe('where a text stops being JSON', () => {
  it.each([
    ['{"a": 1,}', 1, 8, 'a comma too many before }'],
    ['{"a" 1}', 1, 6, 'a colon is expected, found "1}"'],
    ['{"a": 1\n "b": 2}', 2, 2, 'a comma or } is expected, found "\\"b\\": 2}"'],
    ["{'a': 1}", 1, 2, 'a field name in double quotes is expected, found "\'a\': 1}"'],
    ['[1, 02]', 1, 6, 'a comma or ] is expected, found "2]"'],
    ['[1, oops]', 1, 5, 'a value is expected, found "oops]"'],
    ['{"a": "two\nlines"}', 1, 7, 'a text in double quotes, on one line is expected, found "\\"two"'],
    ['{"a": [1, 2', 1, 12, 'a comma or ] is expected, found the end of the text'],
    ['', 1, 1, 'a value is expected, found the end of the text'],
    ['{} {}', 1, 4, '"{}" after the end of the document'],
  ])('%j: line %i, column %i', (text, line, column, problem) => {
    expect(isJson(text)).toBe(false);
    expect(findJsonFault(text)).toEqual({ line, column, problem });
  });

  it('a stray control character is reported where it stands, or where the word or text around it begins', () => {
    fc.assert(
      fc.property(fc.json(), fc.nat(), (json, at) => {
        const stray = at % (json.length + 1);
        const spoilt = `${json.slice(0, stray)}\u0001${json.slice(stray)}`;
        const { line, column } = findJsonFault(spoilt);
        expect(line).toBe(1);
        expect(column - 1).toBeLessThanOrEqual(stray);
        if (column - 1 < stray) expect(spoilt.slice(column - 1)).toMatch(/^["tfn\-.eE]/);
      }),
    );
  });
});
