import { expect, it } from 'vitest';
import { spoken, spokenNumbers } from './spoken.js';

it('a flight and a time are said figure by figure', () => {
  expect(spoken('F05')).toBe('Foxtrot zero five');
  expect(spoken('07:10')).toBe('zero seven one zero');
  expect(spoken('J27-041')).toBe('Juliett two seven dash zero four one');
});

it('drum numbers that follow one another are said as the first and the last', () => {
  expect(spokenNumbers(['0449', '0447', '0448', '0512'])).toBe(
    'zero four four seven to zero four four nine, zero five one two',
  );
  expect(spokenNumbers(['0447', '0448'])).toBe('zero four four seven, zero four four eight');
  expect(spokenNumbers(['99', '100'])).toBe('nine nine, one zero zero');
});
