import { expect, it } from 'vitest';
import { figureIn } from './typed-figure.js';

it('a figure is read with or without a comma between thousands, and with a decimal point', () => {
  expect(['1200', '1,200', ' 6,350.5 ', '.8', '−2', '1,250,000'].map(figureIn)).toEqual([
    1200, 1200, 6350.5, 0.8, -2, 1_250_000,
  ]);
});

it('a decimal comma is no figure: 180,5 kg never becomes 1,805 kg, and 0,80 kg/L never 80', () => {
  expect(['180,5', '0,80', '1,5', '12,50', '1.200,5', ',5', '1200,', 'a lot', ''].map(figureIn)).toEqual(
    Array.from({ length: 9 }, () => null),
  );
});
