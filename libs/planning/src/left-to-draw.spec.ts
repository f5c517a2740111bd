import type { Draw } from '@drumline/stock';
import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { projectScenario } from './flights/project.js';
import { leftToDraw } from './left-to-draw.js';
import { tinyDrums, tinyTask, tinyTerritory } from './tiny-territory.js';

const today = '2031-03-03';
const territory = tinyTerritory({
  helicopterTasks: [
    tinyTask(today, 'NOR', 500),
    tinyTask(today, 'NOR', 200),
    tinyTask('2031-03-04', 'NOR', 100),
  ],
});
const drawn = (amount: number, changes: Partial<Draw> = {}): Draw => ({
  date: today,
  place: 'NOR',
  litres: litres(amount),
  for: 'P',
  ...changes,
});
const litresLeft = (...draws: readonly Draw[]) =>
  leftToDraw(territory, draws).helicopterTasks.map((task) => task.litres);

describe('left to draw', () => {
  it('a draw is taken off the task of its programme, place and day', () => {
    expect(litresLeft(drawn(300))).toEqual([200, 200, 100]);
  });

  it('two draws of a day add up, and go on to the second task of the day when the first is done', () => {
    expect(litresLeft(drawn(300), drawn(250))).toEqual([0, 150, 100]);
  });

  it('what was drawn beyond the tasks of the day is taken off no other day', () => {
    expect(litresLeft(drawn(900))).toEqual([0, 0, 100]);
  });

  it.each([
    ['another programme', { for: 'Q' }],
    ['another place', { place: 'SOU' }],
    ['another day', { date: '2031-03-05' }],
  ])('a draw for %s leaves the task as it is', (_, changes) => {
    expect(litresLeft(drawn(300, changes))).toEqual([500, 200, 100]);
  });

  it('a draw as planned does not move the projection: the evening is as low as it was foreseen in the morning', () => {
    const morning = tinyTerritory({ helicopterTasks: [tinyTask(today, 'NOR', 300)] });
    const [sealed, opened, ...gone] = tinyDrums('NOR', 4, 100);
    const partUsed = { ...opened!, content: 'part used' as const, litres: litres(100) };
    const noon = {
      ...morning,
      drums: [...morning.drums.filter(({ place }) => place !== 'NOR'), sealed!, partUsed, gone[0]!],
    };
    const eveningOf = (scenario: typeof morning) =>
      projectScenario(scenario, []).find(({ place }) => place === 'NOR')!.usable[1];
    expect(eveningOf(morning)).toBe(500);
    expect(eveningOf(leftToDraw(noon, [drawn(300)]))).toBe(500);
    expect(eveningOf(noon)).toBe(200);
  });
});
