import type { Scenario } from '@drumline/planning';
import { expect, it } from 'vitest';
import { whatChanged } from './what-changed.js';

const empty = {
  firstDay: '2027-06-14',
  timeZone: 'Etc/GMT-2',
  policy: {},
  ...Object.fromEntries(
    [
      'surfaceReports',
      'notices',
      'counts',
      'drums',
      'batches',
      'aircraft',
      'pilots',
      'stripLimits',
      'caches',
      'bases',
      'helicopterTasks',
      'slings',
      'plannedUplifts',
      'bookedFlights',
      'flights',
    ].map((list) => [list, []]),
  ),
} as unknown as Scenario;

it('days and hours are told as people say them, by the clocks of the territory', () => {
  const now = {
    ...empty,
    surfaceReports: [{ place: 'XLOR', state: 'soft', at: '2027-06-14T05:30Z' }],
    helicopterTasks: [{ helicopter: 'H1', place: 'XMAR', date: '2027-06-16', programme: 'P1' }],
    slings: [{ from: 'XGAN', to: 'XMAR', date: '2027-06-17' }],
  } as unknown as Scenario;
  expect(whatChanged(empty, now)).toEqual([
    'surface report, new: XLOR soft, Mon 14 Jun 07:30.',
    'helicopter task, new: H1 at XMAR, Wed 16 Jun, P1.',
    'sling, new: XGAN-XMAR, Thu 17 Jun.',
  ]);
});

it('a task of a day that is over by today is no change', () => {
  const then = {
    ...empty,
    helicopterTasks: [{ helicopter: 'H1', place: 'XMAR', date: '2027-06-13', programme: 'P1' }],
  } as unknown as Scenario;
  expect(whatChanged(then, empty)).toEqual([]);
});
