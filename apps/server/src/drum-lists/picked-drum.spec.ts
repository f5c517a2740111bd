import { expect, it } from 'vitest';
import type { DrumNow } from '../stock/drums.service.js';
import { pickedDrum } from './picked-drum.js';

const drum = {
  ...{ number: '0431', batch: 'J27-012', where: { kind: 'at', place: 'XMER' }, content: 'filled sealed' },
  ...{ litres: 200, grossKg: 180.3, condemned: null, held: null, retestDue: '2028-03-01' },
} as DrumNow;

it('a drum that the plan burns after its retest date is not to be taken: both days in words', () => {
  const use = (plannedUse: string) => pickedDrum(drum, { from: 'XMER', plannedUse }).against;
  expect(use('2028-03-01')).toEqual([]);
  expect(use('2028-03-02')).toEqual([
    'Its retest date, Wed 1 March 2028, comes before its planned use, Thu 2 March 2028.',
  ]);
});
