import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Drum } from './drums-read.js';
import { factsOf } from './facts.js';

const drum: Drum = {
  number: '0514',
  alsoKnownAs: [],
  where: { kind: 'at', place: 'LOR' },
  content: 'filled sealed',
  litres: litres(200),
  batch: 'J27-041',
  openedAt: null,
  tareKg: 19.7,
  grossKg: 180.5,
  held: null,
  condemned: null,
  retestDue: '2028-04-19',
};
const facts = (changed: Partial<Drum> = {}) => factsOf({ ...drum, ...changed }, '2027-06-14', (day) => day);
const hold = { reason: 'water', by: 'QA', at: '2027-06-14T06:00Z' };

describe('three facts of a drum', () => {
  it('an unknown drum is not an empty one: nobody has said what is in it', () => {
    const unknown = { content: 'clean empty', litres: litres(0), batch: null, retestDue: null } as const;
    expect(facts(unknown)).toMatchObject({ content: 'not known', use: 'not known' });
    expect(facts({ ...unknown, batch: 'J27-041' }).content).toBe('clean empty');
  });

  it('where it is, what is in it and whether it may be used are said apart', () => {
    expect(facts()).toMatchObject({
      where: 'LOR',
      content: 'filled sealed, 200 L',
      use: 'fit',
      because: 'retest due 2028-04-19',
    });
  });

  it('a held drum is still where it is and still full', () => {
    expect(facts({ held: hold })).toMatchObject({
      where: 'LOR',
      use: 'HOLD',
      because: 'water, QA',
      isHeld: true,
    });
    expect(facts({ held: hold, condemned: hold }).use).toBe('condemned');
  });

  it('the last day of use is a day of use', () => {
    expect(facts({ retestDue: '2027-06-14' }).use).toBe('fit');
    expect(facts({ retestDue: '2027-06-13' }).use).toBe('past retest');
  });

  it('a place that nobody knows is said, with where it was seen', () => {
    expect(facts({ where: { kind: 'unknown', lastSeenAt: 'ESK' } }).where).toBe('unknown, last seen at ESK');
  });
});
