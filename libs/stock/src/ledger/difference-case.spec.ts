import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { closeCase, differenceCases } from './difference-case.js';
import { at, corrected, counted, drawn, ml, received } from './example-movements.js';
import type { Movement } from './movement.js';
import { applyMovement, replay } from './replay.js';

const tolerance = { percentOfBook: 2, litresPerOpenDrum: litres(10), reference: 'stock manual 4.2' };
const twelve = Array.from({ length: 12 }, (_, index) => received(`${index + 1}`, '05:00'));
const dip = counted('STRIP', '09:00', 2150);
const cases = (movements: readonly Movement[]) => differenceCases(replay(movements), tolerance, []);
const [open] = cases([...twelve, dip]);

describe('dip against book', () => {
  it('2,150 L dipped against a book of 2,400 L is 250 L short of a tolerance of 48 L: a case', () => {
    expect(open).toMatchObject({
      place: 'STRIP',
      bookMillilitres: ml(2400),
      countedMillilitres: ml(2150),
      differenceMillilitres: -ml(250),
      toleranceMillilitres: ml(48),
    });
  });

  it('2,385 L against 2,400 L is accepted silently', () => {
    expect(cases([...twelve, counted('STRIP', '09:00', 2385)])).toEqual([]);
  });

  it('a case shows what happened since the last agreed count', () => {
    const draw = drawn('1', '07:00', 20);
    const agreed = counted('STRIP', '06:00', 2400);
    const late = cases([...twelve, agreed, draw, dip]);
    expect([late[0]!.agreedCount, open!.agreedCount]).toEqual([agreed.id, null]);
    expect(late[0]!.movementsSince).toEqual([draw.id]);
    expect(open!.movementsSince).toHaveLength(12);
  });

  it('what happens after the count makes no difference', () => {
    expect(cases([...twelve, dip, drawn('1', '10:00', 200)])[0]).toMatchObject({ bookMillilitres: ml(2400) });
  });

  it('the missing report arrives, and the case is gone', () => {
    const missing = [drawn('1', '08:00', 200), drawn('2', '08:30', 50)];
    expect(differenceCases(missing.reduce(applyMovement, replay([...twelve, dip])), tolerance, [])).toEqual(
      [],
    );
  });

  it('a count that is corrected opens no case', () => {
    expect(cases([...twelve, dip, corrected(dip.id, '10:00')])).toEqual([]);
  });
});

describe('closing a case', () => {
  const closing = { cause: 'spill' as const, words: 'bung leaked', at: at('15:00') };

  it('two people close it, and it is open no more', () => {
    const answer = closeCase(open!, { ...closing, by: 'Ana', second: 'Ben' });
    if (answer.kind === 'refused') throw new Error(answer.words);
    expect(answer.closing).toMatchObject({ count: dip.id, by: 'Ana', second: 'Ben', cause: 'spill' });
    expect(differenceCases(replay([...twelve, dip]), tolerance, [answer.closing])).toEqual([]);
  });

  it('one person alone does not', () => {
    expect(closeCase(open!, { ...closing, by: 'Ana', second: 'Ana' })).toEqual({
      kind: 'refused',
      words: 'Ana is named twice: a second person has to agree.',
    });
  });

  it.each([
    ['helper', 'Ana'],
    ['Ana', 'helper'],
  ])('the person who counted does not: %s with %s', (by, second) => {
    expect(closeCase(open!, { ...closing, by, second })).toEqual({
      kind: 'refused',
      words: 'helper made the count at STRIP and cannot close its case: somebody else has to.',
    });
  });
});
