import { expect, it } from 'vitest';
import { sectionAt } from '../sections.js';
import { doubtsIn, exampleLines, linesIn, missingIn, scenarioOf, withLine } from './draft.js';

const now = new Date('2030-02-03T04:05:06Z');
const caches = sectionAt('caches');

it('an empty draft lacks everything, the settings first', () => {
  expect(missingIn({}, now)[0]).toMatchObject({ at: 'settings' });
});

it('is a document of this minute, on the day of its own time zone', () => {
  const document = scenarioOf({ settings: { title: 'North', timeZone: 'America/Anchorage' } }, now);
  expect(document).toMatchObject({
    title: 'North',
    asOf: '2030-02-03T04:05Z',
    firstDay: '2030-02-02',
    drums: [],
  });
});

it('what looks wrong is a sentence of its own', () => {
  const base = {
    place: 'XALD',
    bulkLitres: 9000,
    pricePerLitre: 2,
    fillDrumsPerDay: 20,
    emptiesFitForUse: 10,
    resupplies: [],
  };
  const doubts = doubtsIn({ bases: [base] }, now);
  expect(doubts.map((words) => words.split('.')[0])).toEqual(['A price of 2 cent/L']);
});

it('a thing is added, changed and taken out again', () => {
  const one = withLine({}, caches, { at: -1, data: { place: 'XLOR' } });
  const two = withLine(one, caches, { at: 0, data: { place: 'XESK' } });
  expect([linesIn(one, caches), linesIn(two, caches)]).toEqual([[{ place: 'XLOR' }], [{ place: 'XESK' }]]);
  expect(linesIn(withLine(two, caches, { at: 0, data: null }), caches)).toEqual([]);
});

it('an invented pilot is copied without the landings of another June', () => {
  const example = {
    pilots: [{ id: 'FW1', types: ['A'], lastLandings: [{ place: 'XGAN', date: '2027-05-30' }] }],
  };
  expect(exampleLines(example, sectionAt('pilots'))).toEqual([
    { id: 'FW1', data: { id: 'FW1', types: ['A'], lastLandings: [] } },
  ]);
});
