import { expect, it } from 'vitest';
import { plannedByProgramme } from './planned-by-programme.js';
import { tinyTask, tinyTerritory } from './tiny-territory.js';

it('hours and litres of a programme are those of all its tasks, whichever helicopter flies them', () => {
  const { programmes } = tinyTerritory();
  const other = { ...programmes[0]!, code: 'Q', name: 'stations' };
  const helicopterTasks = [
    tinyTask('2031-03-04', 'NOR', 500),
    { ...tinyTask('2031-03-05', 'SOU', 250), helicopter: 'another' },
  ];
  expect(plannedByProgramme({ programmes: [...programmes, other], helicopterTasks })).toEqual([
    { programme: 'P', name: 'survey', hours: 7.5, litres: 750 },
    { programme: 'Q', name: 'stations', hours: 0, litres: 0 },
  ]);
});
