import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { drawsLeft, slingsLeft } from './left-to-do.js';

const draw = (amount: number, place = 'XESK', purpose = 'P1') => ({
  date: '2027-06-14',
  place,
  litres: litres(amount),
  for: purpose,
});

describe('planned draws', () => {
  it('what was drawn is taken off those of its own day, place and purpose, in their order', () => {
    const planned = [draw(100), draw(350), draw(200, 'XMAR'), draw(50, 'XESK', 'P2')];
    expect(drawsLeft(planned, [draw(150), draw(75, 'XMAR')]).map((each) => each.litres)).toEqual([
      0, 300, 125, 50,
    ]);
  });

  it('what was drawn beyond them is taken off nothing else', () => {
    expect(drawsLeft([draw(100), draw(50, 'XMAR')], [draw(400)]).map((each) => each.litres)).toEqual([0, 50]);
  });

  it('what was drawn a day early is drawn again by the plan: a task is of its day', () => {
    expect(drawsLeft([{ ...draw(100), date: '2027-06-15' }], [draw(100)])[0]?.litres).toBe(100);
  });
});

describe('planned slings', () => {
  const sling = (day: number, drums: number, changes: { from?: string; to?: string } = {}) => ({
    date: `2027-06-${day}`,
    from: 'XESK',
    to: 'XMAR',
    drums,
    ...changes,
  });
  const left = (planned: ReturnType<typeof sling>[], ...slung: ReturnType<typeof sling>[]) =>
    slingsLeft(planned, slung).map(({ drums }) => drums);

  it('flown on its day, lift by lift, until nothing is left', () => {
    expect(left([sling(17, 6)], sling(17, 3))).toEqual([3]);
    expect(left([sling(17, 6)], sling(17, 3), sling(17, 3))).toEqual([0]);
  });

  it('flown two days early, it does not fly again on its day', () => {
    expect(left([sling(17, 6)], sling(15, 6))).toEqual([0]);
  });

  it('flown a day late, over two days', () => {
    expect(left([sling(17, 6)], sling(18, 3), sling(19, 3))).toEqual([0]);
  });

  it('with fewer drums, the rest is still to fly; with more, no other sling loses any', () => {
    expect(left([sling(17, 6), sling(22, 6)], sling(16, 4))).toEqual([2, 6]);
    expect(left([sling(17, 6), sling(22, 6)], sling(17, 8))).toEqual([0, 6]);
  });

  it('one flown on its own day is that one, also where another was flown late beside it', () => {
    expect(left([sling(15, 6), sling(17, 6)], sling(16, 6), sling(17, 6))).toEqual([0, 0]);
  });

  it.each([
    ['to another pad', sling(17, 6, { to: 'XNED' })],
    ['from another strip', sling(17, 6, { from: 'XFAL' })],
    ['more than a week before', sling(11, 6)],
  ])('one flown %s was for something else', (_, slung) => {
    expect(left([{ ...sling(19, 6) }], slung)).toEqual([6]);
  });
});
