import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { type DrawnFor, programmeTotals } from './programme-totals.js';
import type { Programme } from './scenario.js';
import { tinyTask, tinyTerritory } from './tiny-territory.js';

const programme = (code: string, recharge: Programme['recharge']): Programme => ({
  code,
  name: code,
  recharge,
});
const programmes = [
  programme('P1', { kind: 'delivered cost', marginPercent: 8 }),
  programme('P2', { kind: 'fixed price', centsPerLitre: 520 }),
  programme('P3', { kind: 'delivered cost', marginPercent: 0 }),
  programme('P0', { kind: 'not recharged' }),
];
const draw = (code: string, amount: number, deliveredPerLitre: number | null = 359): DrawnFor => ({
  programme: code,
  into: 'H',
  litres: litres(amount),
  deliveredPerLitre,
});
const totals = (...drawn: readonly DrawnFor[]) =>
  programmeTotals({ ...tinyTerritory(), programmes, from: '2031-03-01', until: '2031-03-31' }, drawn);

describe('a month of the programmes', () => {
  it('is charged by each one’s rule: cost + 8 %, an agreed price, at cost, not at all', () => {
    const all = ['P1', 'P2', 'P3', 'P0'].map((code) => draw(code, 200));
    // 200 L at 3.59 cr/L (product.md S7, F05) are 718.00 cr; + 8 % 775.44 cr. 200 L at 5.20 cr/L are 1,040.00 cr.
    expect(totals(...all).map(({ charged }) => charged)).toEqual([77_544, 104_000, 71_800, 0]);
  });

  it('fuel whose cost nobody knows is not charged at cost, and named', () => {
    const [p1, p2] = totals(draw('P1', 100), draw('P1', 50, null), draw('P2', 50, null));
    expect([p1!.charged, p1!.litresWithoutCost, p1!.drawnLitres]).toEqual([38_772, 50, 150]);
    expect([p2!.charged, p2!.litresWithoutCost]).toEqual([26_000, 0]);
  });

  it('hours flown follow from the litres: 100 L an hour; what an aeroplane took is no helicopter hour', () => {
    const [p1] = totals(draw('P1', 250), { ...draw('P1', 80), into: 'A1' });
    expect([p1!.flownHours, p1!.drawnLitres]).toEqual([2.5, 330]);
  });

  it('planned are the tasks of the days asked for alone', () => {
    const helicopterTasks = [tinyTask('2031-03-04', 'NOR', 500), tinyTask('2031-04-01', 'NOR', 300)].map(
      (task) => ({ ...task, programme: 'P1' }),
    );
    const asked = {
      ...tinyTerritory(),
      programmes,
      helicopterTasks,
      from: '2031-03-01',
      until: '2031-03-31',
    };
    expect(programmeTotals(asked, [])[0]).toMatchObject({ plannedHours: 5, plannedLitres: 500, charged: 0 });
  });
});
