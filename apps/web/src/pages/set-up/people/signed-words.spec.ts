import { describe, expect, it } from 'vitest';
import { stillToSignWords } from '../../../ui/still-to-sign.js';
import { sectionAt, specOf } from '../sections.js';
import { changesIn, fieldChanges } from './signed-words.js';

const spec = specOf(sectionAt('stripLimits'), 'cr');
const limit = {
  place: 'XLOR',
  type: 'B',
  takeoffLb: 8400,
  landingLb: 8300,
  whenSoft: { takeoffLessLb: 500, landingLessLb: 450 },
  reference: 'revision 12',
};

describe('what a signer is shown', () => {
  it('is the old and the new figure with its unit, and nothing that stays', () => {
    expect(fieldChanges(spec, limit, { ...limit, landingLb: 7600, reference: 'revision 13' })).toEqual([
      'Landing limit, dry or damp: 8,300 lb > 7,600 lb',
      'Table and revision: revision 12 > revision 13',
    ]);
  });

  it('says in full what a soft surface takes off, and that it closes', () => {
    const [line] = fieldChanges(spec, limit, { ...limit, whenSoft: 'closed' });
    expect(line).toMatch(/500 lb.*450 lb > closed$/);
  });

  it('a limit taken out says so; a new one says every figure', () => {
    expect(fieldChanges(spec, limit, null)).toEqual(['Taken out']);
    expect(fieldChanges(spec, null, limit)).toHaveLength(6);
  });

  it('of a CSV, every line and every limit taken out', () => {
    const payload = { lines: [{ id: 'XLOR-B', data: limit }], gone: ['XDUN-A'] };
    expect(changesIn(payload).map(({ id, data }) => [id, data === null])).toEqual([
      ['XLOR-B', false],
      ['XDUN-A', true],
    ]);
  });
});

it('says who has still to sign', () => {
  expect(stillToSignWords({ people: 1, roles: ['fuel quality'] })).toBe('fuel quality has still to sign');
  expect(stillToSignWords({ people: 1, roles: [] })).toBe('Nobody else may sign: set-up adds a person.');
});
