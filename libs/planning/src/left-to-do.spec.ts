import type { Draw, DrumMove } from '@drumline/stock';
import { litres, nauticalMiles } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { projectScenario } from './flights/project.js';
import { type Done, drawsNotReported, leftToDo } from './left-to-do.js';
import { tinyDrums, tinyTask, tinyTerritory } from './tiny-territory.js';

const today = '2031-03-03';
const territory = tinyTerritory({
  helicopterTasks: [
    tinyTask(today, 'NOR', 500),
    tinyTask(today, 'NOR', 200),
    tinyTask('2031-03-04', 'NOR', 100),
  ],
});
const done = (changes: Partial<Done>): Done => ({ drawn: [], slung: [], earlierSlings: [], ...changes });
const drawn = (amount: number, changes: Partial<Draw> = {}): Draw => ({
  date: today,
  place: 'NOR',
  litres: litres(amount),
  for: 'P',
  ...changes,
});
const litresLeft = (...draws: readonly Draw[]) =>
  leftToDo(territory, done({ drawn: draws })).helicopterTasks.map((task) => task.litres);

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
    expect(eveningOf(leftToDo(noon, done({ drawn: [drawn(300)] })))).toBe(500);
    expect(eveningOf(noon)).toBe(200);
  });
});

describe('left to sling', () => {
  // NOR stands with 4 drums, SOU with 3; H is to sling 2 from NOR to SOU on day 3.
  const planned = {
    date: '2031-03-05',
    helicopter: 'H',
    from: 'NOR',
    to: 'SOU',
    drums: 2,
    distanceNm: nauticalMiles(15),
  };
  const morning = tinyTerritory({ helicopterTasks: [], slings: [planned] });
  const [first, second, ...rest] = tinyDrums('NOR', 4, 100).map((drum) => ({ ...drum, place: 'SOU' }));
  const elsewhere = morning.drums.filter(({ place }) => place !== 'NOR');
  const stayed = tinyDrums('NOR', 4, 100).slice(2);
  const flown = { ...morning, drums: [...elsewhere, first!, second!, ...stayed] };
  const set = (drums: number, date = today): DrumMove => ({ date, from: 'NOR', to: 'SOU', drums });
  const lastLevels = (scenario: typeof morning) =>
    projectScenario(scenario, []).map(({ place, usable }) => [place, usable.at(-1)]);

  it('a sling flown as planned, or two days early, leads to where it was to lead: 2 drums less and 2 more', () => {
    const asPlanned = [
      ['NOR', 400],
      ['SOU', 1000],
    ];
    expect(rest).toHaveLength(2);
    expect(lastLevels(morning)).toEqual(asPlanned);
    expect(lastLevels(leftToDo(flown, done({ slung: [set(2)] })))).toEqual(asPlanned);
    // Counted out again it would leave the strip empty.
    expect(lastLevels(flown)).toEqual([
      ['NOR', 0],
      ['SOU', 1400],
    ]);
  });

  it('with one drum set down, one is still to fly', () => {
    expect(leftToDo(morning, done({ slung: [set(1)] })).slings).toEqual([{ ...planned, drums: 1 }]);
  });

  it('one flown yesterday for yesterday’s sling leaves the next one to fly', () => {
    const yesterday = '2031-03-02';
    const slung = [set(2, yesterday)];
    expect(leftToDo(morning, done({ slung, earlierSlings: [set(2, yesterday)] })).slings).toEqual([planned]);
    expect(leftToDo(morning, done({ slung })).slings).toEqual([]);
  });
});

describe('a task whose day is over', () => {
  const yesterday = [tinyTask('2031-03-02', 'NOR', 795), tinyTask('2031-03-02', 'SOU', 300)];
  const missing = (draws: readonly Draw[], counted: readonly (readonly [string, string])[] = []) =>
    drawsNotReported(yesterday, { drawn: draws, countedOn: new Map(counted) }).map(
      ({ place, litres }) => `${place} ${litres}`,
    );

  it('and that nobody has reported a draw for is said, with its litres', () => {
    expect(missing([])).toEqual(['NOR 795', 'SOU 300']);
  });

  it('is said with what is left where part of it was reported, and not where all of it was', () => {
    const reported = [drawn(700, { date: '2031-03-02' }), drawn(300, { date: '2031-03-02', place: 'SOU' })];
    expect(missing(reported)).toEqual(['NOR 95']);
    expect(missing([drawn(795)])).toEqual(['NOR 795', 'SOU 300']);
  });

  it('is settled by a count of a later day, not by one of its own', () => {
    expect(missing([], [['NOR', '2031-03-03']])).toEqual(['SOU 300']);
    expect(missing([], [['NOR', '2031-03-02']])).toEqual(['NOR 795', 'SOU 300']);
  });
});
