import { knots, minutes, nauticalMiles, pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { exampleLine, exampleRequest } from '../example-flight.js';
import { exampleLoad, standing } from '../named-load/example-load.js';
import type { NamedLoad } from '../named-load/named-load.js';
import type { RouteRequest } from '../route-load.js';
import { type AlternateStrip, alternateLines, alternatesOf, notToUse } from './alternates.js';
import { ifSoft } from './fallbacks.js';
import { goBackLines, tailwindWords } from './go-back-lines.js';
import { type LandingHours, latestLeaves } from './latest-leave.js';
import { leaveAgain } from './leave-again.js';

const there = ['BASE', 'STRIP', 'BASE'];
const six = ['R1L', 'R1R', 'R2L', 'R2R', 'R3L', 'R3R'].map((position, i) => standing(`044${i}`, position));
/** The strip with other limits. */
const limited = (takeoff: number, landing: number): RouteRequest => {
  const request = exampleRequest(there);
  const line = { ...exampleLine, place: 'STRIP', takeoffLb: pounds(takeoff), landingLb: pounds(landing) };
  const at = (end: RouteRequest['legs'][number]['to']) =>
    end.place.code === 'STRIP' ? { ...end, limit: line } : end;
  return { ...request, legs: request.legs.map((leg) => ({ ...leg, from: at(leg.from), to: at(leg.to) })) };
};
const load = exampleLoad(there, six);
// At the equator, longitude 0: the sun sets about 18:05 UTC.
const day: LandingHours = {
  date: '2027-03-21',
  timeZone: 'UTC',
  lastLanding: '20:00',
  daylightMarginMinutes: minutes(30),
};

describe('latest time to leave', () => {
  it('counts back from sunset less the margin, through block times and turn-rounds', () => {
    // Block: 75 / 150 h + 3 min = 33 min; turn-round 30 min. Home by about 17:40, so leave the strip by 17:07.
    const [out, home] = latestLeaves(load, day);
    const setAt = home!.setBy.landBy!;
    expect(setAt >= '17:30' && setAt <= '17:45').toBe(true);
    const minute = (time: string) => Number(time.slice(0, 2)) * 60 + Number(time.slice(3));
    expect(minute(setAt) - minute(home!.at!)).toBe(33);
    expect(minute(home!.at!) - minute(out!.at!)).toBe(63);
    expect(out!.setBy.place).toBe('BASE');
  });

  it('the last landing of the day wins where it is earlier', () => {
    const [out] = latestLeaves(load, { ...day, lastLanding: '12:00' });
    expect(out).toMatchObject({ at: '10:24', setBy: { place: 'BASE', landBy: '12:00' } });
  });

  it('too early a last landing leaves no time at all', () => {
    expect(latestLeaves(load, { ...day, lastLanding: '00:20' })[0]!.at).toBeNull();
  });
});

describe('unload or stay with named drums', () => {
  const arrivalLb = leaveAgain(load, 0).arrivalLb;

  it('may leave loaded under the limit', () => {
    expect(leaveAgain(load, 0)).toMatchObject({ canLeaveLoaded: true, drumsOff: [] });
  });

  it('over it, so many drums must come out, nearest the door first', () => {
    const over = (by: number): NamedLoad => ({ ...load, request: limited(arrivalLb - by, 7700) });
    expect(leaveAgain(over(11), 0)).toMatchObject({ overLb: 11, drumsOff: ['0444'], canLeaveLoaded: false });
    expect(leaveAgain(over(397), 0).drumsOff).toEqual(['0444']);
    expect(leaveAgain(over(398), 0).drumsOff).toEqual(['0444', '0445']);
    expect(leaveAgain(over(11), 0).words).toContain(
      '11 lb over. Unload 1 drum to leave again (0444), or stay',
    );
  });

  it('where not even the empty aeroplane can leave, that is said', () => {
    const low = { ...load, request: limited(4000, 7700) };
    expect(leaveAgain(low, 0)).toMatchObject({ drumsOff: null });
    expect(leaveAgain(load, 0, 'closed')).toMatchObject({ limitLb: null, canLeaveLoaded: false });
  });
});

describe('when the strip is soft', () => {
  it('a load within the soft limits goes whole', () => {
    const two = { ...load, drums: six.slice(0, 2) };
    expect(ifSoft(two, 0)).toMatchObject({ take: 2, leave: [] });
  });

  it('the last drums of the list are left at the base, so that the rest holds', () => {
    // Lands with 7,492 lb; soft it may land with 7,250: one drum of 397 lb less.
    expect(ifSoft(load, 0)).toMatchObject({ take: 5, leave: ['0445'], moves: [] });
    const lower = { ...load, request: limited(7900, 7300) };
    const soft = ifSoft(lower, 0);
    expect(soft).toMatchObject({ take: 4, leave: ['0444', '0445'] });
    expect(soft.words).toMatch(
      /^If STRIP is soft: take 4, leave 0444 and 0445 here. Lands with 6,\d{3} lb.$/,
    );
  });

  it('closed when soft: do not go', () => {
    const request = exampleRequest(there);
    const closed = {
      ...request,
      legs: request.legs.map((leg) => ({
        ...leg,
        to: { ...leg.to, limit: { ...leg.to.limit!, whenSoft: 'closed' as const } },
      })),
    };
    expect(ifSoft({ ...load, request: closed }, 0)).toMatchObject({
      take: null,
      words: 'If STRIP is soft: do not go.',
    });
  });
});

describe('alternates', () => {
  const strip = (
    code: string,
    distance: number,
    roomDrums: number,
    surface = 'dry' as const,
  ): AlternateStrip => {
    const end = exampleRequest(['BASE', code], { [code]: surface }).legs[0]!.to;
    const distanceNm = nauticalMiles(distance);
    const homeNm = nauticalMiles(40);
    return { end, isSurfaceUnknown: false, distanceNm, homeNm, isBase: false, roomDrums, whyNot: null };
  };
  const away = { from: 'BASE', to: 'STRIP' };

  it('the nearest with room comes first, with the drums and the room in words', () => {
    const found = alternatesOf(load, 0, [strip('FAR', 40, 28), strip('FULL', 5, 3), strip('NEAR', 10, 12)]);
    expect(found.map(({ place, whyNot }) => [place, whyNot])).toEqual([
      ['NEAR', null],
      ['FAR', null],
      ['FULL', 'no room for the drums: 3 of 6'],
    ]);
    expect(alternateLines(away, found)).toEqual([
      'If STRIP closes while you are away: 6 drums to NEAR, room 12.',
      'Also: FAR, room 28.',
    ]);
    expect(notToUse(found)).toBe('Not to use: FULL (no room for the drums: 3 of 6).');
  });

  it('not where the fuel does not reach, nor where it is closed or too weak', () => {
    const closed = {
      ...strip('SHUT', 5, 9),
      end: { ...strip('SHUT', 5, 9).end, surface: 'closed' as const },
    };
    const weak = strip('WEAK', 5, 9);
    const weakEnd = { ...weak.end, limit: { ...weak.end.limit!, landingLb: pounds(6000) } };
    const found = alternatesOf(load, 0, [strip('FAR', 140, 9), closed, { ...weak, end: weakEnd }]);
    expect(found.map(({ place, whyNot }) => [place, whyNot])).toEqual([
      ['SHUT', 'closed'],
      ['WEAK', 'too heavy to land'],
      ['FAR', 'not enough fuel'],
    ]);
    expect(alternateLines(away, found)[0]).toContain('no place takes this flight. Hear from STRIP');
    // On the way home there is no home among them, and nothing to tell.
    expect(notToUse(found)).toBeNull();
    const home = { ...strip('BASE', 140, 0), homeNm: nauticalMiles(0) };
    expect(notToUse(alternatesOf(load, 0, [closed, home]))).toBe(
      'Not to use: SHUT (closed); BASE (not enough fuel).',
    );
  });

  it('home comes first where its fuel and limits allow, though a strip is nearer', () => {
    const home = { ...strip('BASE', 75, 0), homeNm: nauticalMiles(0), isBase: true, roomDrums: null };
    const found = alternatesOf(load, 0, [strip('NEAR', 10, 12), home]);
    expect(alternateLines(away, found)).toEqual([
      'If STRIP closes while you are away: come home with 6 drums.',
      'Also: NEAR, room 12.',
    ]);
    expect(notToUse(found)).toBeNull();
    const shut = alternatesOf(load, 0, [strip('NEAR', 10, 12), { ...home, whyNot: 'no daylight' }]);
    expect(alternateLines(away, shut)).toEqual([
      'If STRIP closes while you are away: 6 drums to NEAR, room 12.',
    ]);
    // It is farther, and is named all the same.
    expect(notToUse(shut)).toBe('Not to use: BASE (no daylight).');
  });

  it('then a strip from which it gets home with final reserve; one from which it does not is none to go to', () => {
    // 430 lb on landing. LOST: 10 NM is 40 lb, home 100 NM is 220 lb: 170 lb, 55 lb short of 225 lb final reserve.
    const lost = { ...strip('LOST', 10, 12), homeNm: nauticalMiles(100) };
    const found = alternatesOf(load, 0, [lost, strip('FAR', 20, 12)]);
    expect(load.route.legs[0]!.fuelAtLandingLb).toBe(430);
    expect(found.map(({ place, homeShortLb }) => [place, homeShortLb])).toEqual([
      ['FAR', 0],
      ['LOST', 55],
    ]);
    expect(alternateLines(away, found)).toEqual([
      'If STRIP closes while you are away: 6 drums to FAR, room 12.',
    ]);
    expect(notToUse(found)).toBe('Not to use: LOST (no fuel to come home: 55 lb short).');
    // Where no other will do it is better than none, and says what is wanting.
    expect(alternateLines(away, alternatesOf(load, 0, [lost]))).toEqual([
      'If STRIP closes while you are away: 6 drums to LOST, room 12, no fuel to come home: 55 lb short.',
    ]);
  });

  it('on the way home it is home that closes: a base comes before a nearer strip, and no fuel for home is asked', () => {
    const base = { ...strip('BASE2', 7, 0), isBase: true, roomDrums: null };
    const found = alternatesOf(load, 1, [{ ...strip('NEAR', 5, 0), homeNm: nauticalMiles(200) }, base]);
    expect(found.map(({ place, homeShortLb }) => [place, homeShortLb])).toEqual([
      ['BASE2', 0],
      ['NEAR', 0],
    ]);
    const { lines } = goBackLines(load, 1, day, []);
    expect(lines.join(' ')).not.toContain('Go back');
    expect(lines.at(-1)).toBe(
      'If BASE closes while you are away: no place takes this flight. Hear from BASE before you leave STRIP.',
    );
  });

  it('a one-way strip says so, with its tailwind limit', () => {
    const near = strip('NEAR', 10, 12);
    const runway = {
      lengthFt: near.end.place.elevationFt,
      slopePercent: 8,
      material: 'earth',
      oneWay: true,
      tailwindLimitKt: knots(3),
      committalPoint: null,
    };
    const oneWay = { ...near, end: { ...near.end, place: { ...near.end.place, runway } } };
    expect(alternatesOf(load, 0, [oneWay])[0]!.words).toBe('NEAR, room 12, one-way, tailwind to 3 kt');
  });

  it('room is less by what this flight has put down there on an earlier leg', () => {
    const stops = ['BASE', 'NEAR', 'STRIP', 'BASE'];
    const drums = six.map((drum, i) => ({ ...drum, offAfterLeg: i === 0 ? 0 : 1 }));
    const two = exampleLoad(stops, drums);
    // 10 a day, 5 by another flight: 5; one of its own: 4 for the 5 that are aboard.
    const [near] = alternatesOf(two, 1, [strip('NEAR', 10, 5)]);
    expect(near).toMatchObject({ roomDrums: 4, whyNot: 'no room for the drums: 4 of 5' });
    expect(alternatesOf(two, 0, [strip('FAR', 10, 5)])[0]!.roomDrums).toBe(5);
  });

  it('what keeps the crew away comes before anything that is aboard', () => {
    const barred = { ...strip('NEAR', 5, 1), whyNot: 'FW4 is not cleared for NEAR, class 3' };
    const farther = { ...strip('FARTHER', 50, 1), whyNot: 'FW4 is not cleared for FARTHER, class 3' };
    const found = alternatesOf(load, 0, [barred, farther, strip('FAR', 40, 28)]);
    expect(alternateLines(away, found)).toEqual([
      'If STRIP closes while you are away: 6 drums to FAR, room 28.',
    ]);
    // Nobody asks why a strip behind the first that will do is not named.
    expect(notToUse(found)).toBe('Not to use: NEAR (FW4 is not cleared for NEAR, class 3).');
    expect(notToUse(alternatesOf(load, 0, [farther, strip('NEAR', 10, 28)]))).toBeNull();
  });

  it('an unknown surface stands as soft, and says so; closed when soft, it will not do', () => {
    const soft = strip('SOFT', 5, 9);
    const unknown = { ...soft, end: { ...soft.end, surface: 'soft' as const }, isSurfaceUnknown: true };
    const closing = { ...unknown.end, limit: { ...soft.end.limit!, whenSoft: 'closed' as const } };
    const light = { ...load, drums: six.slice(0, 2) };
    expect(alternatesOf(light, 0, [unknown])[0]!.words).toBe('SOFT, room 9, as soft');
    expect(alternatesOf(light, 0, [{ ...unknown, isSurfaceUnknown: false }])[0]!.words).toBe(
      'SOFT, room 9, soft',
    );
    expect(alternatesOf(load, 0, [unknown])[0]!.whyNot).toBe('too heavy to land, surface unknown');
    expect(alternatesOf(load, 0, [{ ...unknown, end: closing }])[0]!.whyNot).toBe(
      `closed to type ${load.request.type.id} when soft, surface unknown`,
    );
  });
});

it('the lines of a leg in words', () => {
  const request = exampleRequest(there);
  const runway = {
    lengthFt: request.legs[0]!.to.place.elevationFt,
    slopePercent: 11,
    material: 'earth',
    oneWay: true,
    tailwindLimitKt: knots(3),
    committalPoint: '1.1 NM final, at the stream fork',
  };
  const oneWay = {
    ...request,
    legs: request.legs.map((leg) => ({ ...leg, to: { ...leg.to, place: { ...leg.to.place, runway } } })),
  };
  const { lines } = goBackLines({ ...load, request: oneWay }, 0, { ...day, lastLanding: '12:00' }, []);
  expect(lines.slice(0, 3)).toEqual([
    'Go back if tailwind more than 3 kt. Decide by 1.1 NM final, at the stream fork.',
    'STRIP is one-way: land one direction, take off the other.',
    'Leave BASE by 10:24, STRIP by 11:27: land BASE by 12:00.',
  ]);
  expect(lines[3]).toMatch(/^Unload or stay: STRIP dry: may leave loaded/);
  expect(lines.at(-1)).toBe(
    'If STRIP closes while you are away: no place takes this flight. Hear from STRIP before you leave BASE.',
  );
});

it('a tailwind on the limit is within it, a knot more is outside', () => {
  expect(tailwindWords(knots(3), knots(3))).toBe('Tailwind 3 kt: within the limit of 3 kt.');
  expect(tailwindWords(knots(3), knots(5))).toBe('Tailwind 5 kt: outside the limit of 3 kt, go back.');
});
