import { expect, it } from 'vitest';
import { columnWords } from './csv-columns.js';

it('a column of the file goes by the label of the form', () => {
  expect(columnWords('strip-limits', 'takeoffLb')).toBe('Take-off limit, dry or damp');
  expect(columnWords('strip-limits', 'softTakeoffLessLb')).toMatch(/Off the take-off limit when soft$/);
  expect(columnWords('drums', 'tareKg')).not.toBe('tareKg');
  expect(columnWords('helicopter-tasks', 'litres')).toMatch(/^[A-Z]/);
  expect([columnWords('strip-limits', 'landingKg'), columnWords('drums', '')]).toEqual(['Landing kg', '']);
});
