import { kilogramsPerLitre, litres, pounds } from '@drumline/units';
import { expect, it } from 'vitest';
import { checkGauge } from './gauge-check.js';

const check = (drawn: number, before: number, after: number) =>
  checkGauge(litres(drawn), { beforeLb: pounds(before), afterLb: pounds(after) }, kilogramsPerLitre(0.8));

it('396 lb on the gauge are 224.5 L at 0.80 kg/L: 0.5 L from the 225 L that were written', () => {
  const checked = check(225, 410, 806);
  expect(checked).toMatchObject({ takenLb: 396, agrees: true });
  expect(checked.gaugeLitres).toBeCloseTo(224.53, 2);
  expect(checked.apartLitres).toBeCloseTo(0.47, 2);
});

it('a drum that was forgotten stands out, from either side', () => {
  expect(check(25, 410, 806).agrees).toBe(false);
  expect(check(425, 410, 806).agrees).toBe(false);
});

it('a gauge that fell is no draw', () => {
  expect(check(225, 806, 410)).toMatchObject({ takenLb: -396, agrees: false });
});
