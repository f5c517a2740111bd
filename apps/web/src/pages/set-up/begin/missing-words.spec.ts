import { expect, it } from 'vitest';
import { missingWords } from './missing-words.js';

const wordsOf = (given: Partial<Parameters<typeof missingWords>[0]>) => {
  const { what, next, section } = missingWords(
    { at: 'places', of: '', field: '', what: '', next: '', ...given },
    'cr',
  );
  return {
    what,
    step: section?.title,
    next: next.map((part) => (typeof part === 'string' ? part : `<${part.section.name}>`)).join(''),
  };
};

it('a strip that nobody may land at is told by its code, with the way to the step of the limits', () => {
  expect(
    wordsOf({
      of: 'XMER',
      what: 'no type has strip limits at XMER.',
      next: 'Add a line to stripLimits, or make it a pad.',
    }),
  ).toEqual({
    what: 'No type has strip limits at XMER.',
    step: 'Places',
    next: 'Add a line to <strip-limits>, or make it a pad.',
  });
});

it('a field is told by its label, and its figure as it is typed', () => {
  expect(
    wordsOf({
      at: 'caches',
      of: 'XLOR',
      field: 'minimumLitres',
      what: '"x" is not a number.',
      next: 'Correct it.',
    }).what,
  ).toMatch(/^XLOR, [A-Z][^:]*: "x" is not a number\.$/);
  expect(
    wordsOf({ at: 'settings', field: 'offeredDays', what: '9 days are offered of 7 looked ahead.' }).what,
  ).toBe('Days offered to the dispatcher, from day 1: 9 days are offered of 7 looked ahead.');
});

it('a part that is not there yet is said as it is', () => {
  expect(
    wordsOf({
      at: 'bases',
      what: 'Missing: fuel at a base.',
      next: 'Give litres in bulk, or bring filled drums in.',
    }),
  ).toEqual({
    what: 'Missing: fuel at a base.',
    step: 'Bases: fuel, price',
    next: 'Give litres in bulk, or bring filled drums in.',
  });
});

it('a thing that is there is named as its form is, so that the way leads to it', () => {
  const idOf = (at: Parameters<typeof missingWords>[0]['at'], of: string) =>
    missingWords({ at, of, field: '', what: '', next: '' }, 'cr').id;
  expect(idOf('caches', 'XLOR')).toBe('XLOR');
  expect(idOf('stripLimits', 'XLOR A')).toBe('XLOR-A');
  expect(idOf('slings', 'no. 3')).toBeUndefined();
  expect(idOf('bases', '')).toBeUndefined();
});
