import { describe, expect, it } from 'vitest';
import { addedNames, withChanges } from './with-changes.js';

const document = {
  asOf: '2027-06-14T06:00Z',
  pilots: [
    { id: 'FW1', types: ['A'], daysOff: [] },
    { id: 'FW2', types: ['B'], daysOff: [] },
  ],
  surfaceReports: [{ place: 'XLOR', state: 'dry' }],
};

describe('changes laid over a scenario', () => {
  it('a pilot falls sick: the line of that name changes, field by field', () => {
    const { pilots } = withChanges(document, { pilots: [{ id: 'FW2', daysOff: ['2027-06-15'] }] });
    expect(pilots).toEqual([document.pilots[0], { id: 'FW2', types: ['B'], daysOff: ['2027-06-15'] }]);
  });

  it('a strip goes soft: the report is added after those that stand', () => {
    const report = { place: 'XLOR', state: 'soft' };
    expect(withChanges(document, { surfaceReports: [report] }).surfaceReports).toEqual([
      document.surfaceReports[0],
      report,
    ]);
  });

  it('time goes on: a single field is replaced', () => {
    expect(withChanges(document, { asOf: '2027-06-15T06:52Z' }).asOf).toBe('2027-06-15T06:52Z');
  });

  it('a pilot joins: a line of a new name is added', () => {
    expect(withChanges(document, { pilots: [{ id: 'FW9' }] }).pilots).toHaveLength(3);
  });

  it('a slip in a name is told: the line would be added', () => {
    expect(addedNames(document, { pilots: [{ id: 'FW1' }, { id: 'FW9' }] })).toEqual(['pilots FW9']);
  });
});
