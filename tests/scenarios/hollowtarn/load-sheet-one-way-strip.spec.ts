import { describe, expect, it } from 'vitest';
import { namedLoad, numbers, rowsOf, sheetOf, standing } from './sheet-of-flight.js';

describe('the load sheet of F06, the one-way strip', () => {
  const load = namedLoad('F06', standing(numbers(573, 4), 'XGAN', []));
  const sheet = sheetOf('F06', load, 'FW1');
  const out = sheet.legs[0]!;

  it('Unload or stay: 6,255 lb with its named drums against 6,250 lb, one drum must come off', () => {
    expect(out.goBack.leaveAgain).toMatchObject({
      arrivalLb: 6255,
      limitLb: 6250,
      overLb: 5,
      canLeaveLoaded: false,
    });
    expect(out.goBack.leaveAgain!.drumsOff).toHaveLength(1);
    expect(rowsOf(out)).toMatchObject({ 'zero fuel': 5831, 'take-off XMER': 6396, 'land XGAN, dry': 6255 });
  });

  it('Unload or stay by the plan: take-off 6,402 lb less 141 lb is 6,261 lb, 11 lb over', () => {
    expect(out.totals.plannedTakeoffLb).toBe(6402);
    expect(load.route.unloadOrStay[0]).toMatchObject({ printedArrivalLb: 6261, printedOverLb: 11 });
  });

  it('says when to go back', () => {
    expect(out.goBack.lines.slice(0, 2)).toEqual([
      'Go back if tailwind more than 3 kt. Decide by 1.1 NM final, at the stream fork.',
      'XGAN is one-way: land one direction, take off the other.',
    ]);
    // Home by 20:00 (the sun does not set): less 48.1 min of block both ways and 35 min on the ground.
    expect(out.goBack.latestLeave).toEqual({
      from: 'XMER',
      at: '18:36',
      setBy: { place: 'XMER', landBy: '20:00' },
    });
  });

  it('if it closes while you are away: home, 49 NM, though a strip is nearer', () => {
    // 424 lb on landing; home burns 141 lb: 283 lb, of 248 lb final reserve. XFAL: 293 lb, home 126 lb: 167 lb.
    const [home, ...others] = out.goBack.alternates;
    expect(home).toMatchObject({ place: 'XMER', isHome: true, fuelLb: 283, roomDrums: null });
    expect(others.find(({ place }) => place === 'XFAL')).toMatchObject({ fuelLb: 293, homeShortLb: 81 });
    expect(out.goBack.notToUse).toMatch(/^Not to use: XLOR \(no fuel to come home: \d+ lb short\)\.$/);
    expect(out.goBack.lines).toContain('If XGAN closes while you are away: come home with 4 drums.');
    expect(out.goBack.lines.join(' ')).not.toContain('no fuel to come home');
  });

  it('says until when it may leave, from the base and from the strip', () => {
    expect(out.goBack.lines).toContain('Leave XMER by 18:36, XGAN by 19:35: land XMER by 20:00.');
  });

  it('on the way home it is not sent back to the one-way strip', () => {
    const home = sheet.legs[1]!.goBack;
    expect(home.lines.join(' ')).not.toMatch(/[Gg]o back/);
    expect(home.lines.at(-1)).toBe(
      'If XMER closes while you are away: no place takes this flight. Hear from XMER before you leave XGAN.',
    );
  });
});
