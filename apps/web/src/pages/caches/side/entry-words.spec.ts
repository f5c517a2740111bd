import { describe, expect, it } from 'vitest';
import { instantOfTime, litresTyped } from '../../../counting/typed.js';
import { entryLines, entryWords } from './entry-words.js';

describe('what is typed and read', () => {
  it('a time of day is of today, and of yesterday where it has not come yet', () => {
    const clock = { now: new Date('2027-06-14T06:20Z'), time: () => '06:20' };
    expect(instantOfTime('06:10', clock)).toBe('2027-06-14T06:10Z');
    expect(instantOfTime('1740', clock)).toBe('2027-06-13T17:40Z');
    expect(instantOfTime('25:00', clock)).toBeUndefined();
  });

  it('litres are whole', () =>
    expect(['2,150', '2150', '', '12.5'].map(litresTyped)).toEqual([2150, 2150, undefined, undefined]));

  it('entries are sentences; the opening of the ledger is one line, a draw always its own', () => {
    const entry = { happenedAt: '2027-06-14T06:00Z', by: 'opening of the ledger', means: 'paper' };
    const received = ['0001', '0002'].map((drum) => ({ ...entry, id: drum, kind: 'received', drum }));
    const drawn = {
      ...entry,
      id: 'd',
      kind: 'drawn',
      drum: '0001',
      millilitres: 150_000,
      into: 'H1',
      programme: 'P1',
    };
    expect(entryWords(drawn)).toBe('150 L drawn from 0001 into H1 for P1');
    expect(entryLines([...received, drawn]).map(({ words }) => words)).toEqual([
      '2 drums received',
      '150 L drawn from 0001 into H1 for P1',
    ]);
  });
});
