import { kilograms, litres, pounds } from '@drumline/units';
import { expect, it } from 'vitest';
import { questionFill, questionLimit, questionWeight } from './question-weight.js';

const six = { count: 6, grossKg: kilograms(180) };

it('kilograms in a field for pounds are asked about', () => {
  expect(questionWeight(1078, 'lb', six)).toBe('1,078 in a lb field is light for 6 drums. Is it kg?');
});

it('pounds in a field for kilograms are asked about', () => {
  expect(questionWeight(2378, 'kg', six)).toBe('2,378 in a kg field is heavy for 6 drums. Is it lb?');
});

it('what six drums weigh is not asked about', () => {
  expect(questionWeight(2378, 'lb', six)).toBeNull();
  expect(questionWeight(1078.2, 'kg', six)).toBeNull();
});

it('a figure that fits no unit says what the drums weigh', () => {
  expect(questionWeight(23_780, 'lb', six)).toBe(
    '23,780 in a lb field is heavy for 6 drums. They weigh about 2,381 lb.',
  );
});

it('without drums there is nothing to compare with', () => {
  expect(questionWeight(12, 'lb', { ...six, count: 0 })).toBeNull();
});

it('a drum that would hold more than to the brim is asked about, one that is full is not', () => {
  const brimLitres = litres(216);
  expect(questionFill(kilograms(250), { litres: litres(288), brimLitres })).toBe(
    '250 kg would be 288 L of fuel, and a drum holds 216 L. Weighed with its pallet, or in lb?',
  );
  expect(questionFill(kilograms(193), { litres: litres(216), brimLitres })).toBeNull();
});

it('a strip limit typed in kg is asked about, beside what the type may weigh; a short strip is not', () => {
  const typeA = pounds(7150);
  expect(questionLimit(pounds(3130), typeA)).toBe('Is it kg?');
  expect(questionLimit(pounds(6550), typeA)).toBeNull();
  expect(questionLimit(pounds(5100), typeA)).toBeNull();
  expect(questionLimit(pounds(71), typeA)).toBeNull();
});
