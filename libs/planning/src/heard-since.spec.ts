import { hours, type IsoInstant } from '@drumline/units';
import { expect, it } from 'vitest';
import { heardSince } from './heard-since.js';
import type { Scenario } from './scenario.js';
import { tinyTerritory } from './tiny-territory.js';

type Reports = Parameters<typeof heardSince>[1];
const tiny = tinyTerritory();

const report = (state: 'dry' | 'soft', at: IsoInstant): Reports[number] => ({
  place: 'XLOR',
  state,
  at,
  by: 'strip helper',
});

const since = (ofThePlan: Reports, now: Reports) => {
  const place = {
    ...tiny.places[0]!,
    code: 'XLOR',
    surface: { expected: 'dry' as const, staleAfterHours: hours(24) },
  };
  const scenario: Scenario = {
    ...tiny,
    surfaceReports: now,
    places: [place],
    asOf: '2027-06-14T08:00Z',
    timeZone: 'Etc/GMT',
    policy: { ...tiny.policy, flyingDay: { ...tiny.policy.flyingDay, firstDeparture: '06:00' } },
    firstDay: '2027-06-14',
    days: 14,
  };
  return heardSince(scenario, ofThePlan).map(({ state, at }) => `${state} ${at}`);
};

const soft = report('soft', '2027-06-14T05:40Z');
const dryLater = report('dry', '2027-06-14T06:30Z');
const dryBefore = report('dry', '2027-06-14T05:00Z');

it('a strip reported soft changes what the plan was made on', () => {
  expect(since([dryBefore], [dryBefore, soft])).toEqual(['soft 2027-06-14T05:40Z']);
});

it('a soft report that a later dry one outranks changes nothing, whenever it comes in', () => {
  expect(since([dryLater], [dryLater, soft])).toEqual([]);
  expect(since([], [soft, dryLater])).toEqual([]);
});

it('dry where dry was expected changes nothing; dry again after soft does', () => {
  expect(since([], [dryLater])).toEqual([]);
  expect(since([soft], [soft, dryLater])).toEqual(['dry 2027-06-14T06:30Z']);
});
