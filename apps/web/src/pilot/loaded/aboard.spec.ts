import { inches, kilograms, pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { isNewer } from '../day/opened-flight.js';
import { tooManyFor } from '../leg/soft-rule.js';
import { loaded } from '../reports/reports.js';
import { exampleDay, exampleFlight, exampleReporter } from '../testing/example-flight.js';
import { asPlanned, changePlaces, drumByWeight, drumInBook, standsIn } from './aboard.js';
import { flightAsLoaded } from './as-loaded.js';

const request = exampleFlight.request!;
const planned = asPlanned(request);
const standing = (aboard: typeof planned) => aboard.map(({ number, position }) => `${number} ${position}`);
const other = drumInBook('0436', planned, exampleDay)!;
const takeOffArm = ({ sheet }: typeof exampleFlight) =>
  sheet!.legs[0]!.rows.find(({ label }) => label.startsWith('take-off'))!.cg!.armIn;

describe('another drum at the base', () => {
  it('stands where the planned one was to stand', () => {
    expect(standing(standsIn(planned, 'R1L', other))).toEqual(['0436 R1L', '0435 R1R', '0437 R2L']);
  });

  it('that is aboard already changes places', () => {
    const aboard = drumInBook('0437', planned, exampleDay)!;
    expect(standing(standsIn(planned, 'R1L', aboard))).toEqual(['0434 R2L', '0435 R1R', '0437 R1L']);
    expect(standing(changePlaces(planned, 'R1L', 'R1R'))).toEqual(['0434 R1R', '0435 R1L', '0437 R2L']);
  });

  it('that no book has is taken by its weight: the steel as planned, the rest fuel', () => {
    expect(drumInBook('0913', planned, exampleDay)).toBeNull();
    expect(drumByWeight('0913', kilograms(180), request)).toMatchObject({
      number: '0913',
      grossKg: 180,
      tareKg: 20,
      litres: 200,
    });
  });
});

describe('a drum that no book has', () => {
  const loadedWith = (grossKg: number, changes: Partial<typeof request.load.request> = {}) => {
    const own = { ...request, load: { ...request.load, request: { ...request.load.request, ...changes } } };
    const drum = drumByWeight('0913', kilograms(grossKg), own);
    return flightAsLoaded({ ...exampleFlight, request: own }, standsIn(planned, 'R1L', drum));
  };
  const totalsOf = ({ sheet }: typeof exampleFlight) => sheet!.legs[0]!.totals;

  it('is in both totals with the weight that was typed, and in the balance', () => {
    const heavier = loadedWith(200);
    // 200 kg is 441 lb; 0434 weighs 179 kg, 395 lb.
    expect(totalsOf(heavier).loadLb - totalsOf(exampleFlight).loadLb).toBe(46);
    expect(totalsOf(heavier).takeoffLb - totalsOf(exampleFlight).takeoffLb).toBe(46);
    expect(totalsOf(heavier).items[0]!.name).toBe('0913 in R1L');
    expect(takeOffArm(heavier)).not.toBe(takeOffArm(exampleFlight));
    expect(heavier.sheet!.square).toMatch(/^R1L 0913 /m);
  });

  it('and that is too heavy for its place in the cabin does not hold, and base is told', () => {
    const tooHeavy = loadedWith(240);
    // 240 kg is 529 lb.
    expect(tooHeavy.sheet).toMatchObject({ holds: false });
    expect(tooHeavy.sheet!.faults.join()).toContain('R1L: 529 lb, limit 450 lb: 79 lb over');
    const { requests } = loaded(exampleReporter, tooHeavy, {
      ...{ loadLb: 1323, byHandLb: 1323, takeoffLb: 6500, byAircraftLb: 6500 },
      signed: null,
      bySoftFigures: false,
      attempts: [],
    });
    expect(requests[0]!.body).toMatchObject({
      drums: [{ drum: '0913', grossKg: 240 }, { drum: '0435' }, { drum: '0437' }],
      doesNotHold: expect.stringContaining('R1L: 529 lb, limit 450 lb: 79 lb over'),
    });
    expect(JSON.stringify(requests[0]!.body).match(/grossKg/g)).toHaveLength(1);
  });

  it('that stands well in its place does not hold either where it breaks a limit of take-off, landing, strip or envelope', () => {
    const { request: route } = request.load;
    const [out, home] = route.legs;
    const sums = exampleFlight.sheet!.legs[0]!.rows.filter(({ kind }) => kind === 'sum');
    const lbOf = (label: string) => sums.find((row) => row.label.startsWith(label))!.lb;
    // 200 kg is 441 lb, within the 450 lb of the place, and 46 lb more than 0434; each limit has 20 lb to spare.
    const faultsWith = (changes: Partial<typeof route>) => {
      const { holds, faults } = loadedWith(200, changes).sheet!;
      expect(holds).toBe(false);
      return faults.join('. ');
    };
    expect(loadedWith(200).sheet).toMatchObject({ holds: true, faults: [] });
    const limited = (limit: object) => ({ ...route.type, ...limit });
    const takeoff = { maxTakeoffLb: pounds(lbOf('take-off') + 20) };
    expect(faultsWith({ type: limited(takeoff) })).toContain('XMER-XGAN: 26 lb over max take-off');
    const landing = { maxLandingLb: pounds(lbOf('land XGAN') + 20) };
    expect(faultsWith({ type: limited(landing) })).toContain('XMER-XGAN: 26 lb over max landing');
    const strip = { ...out!.to.limit!, landingLb: pounds(lbOf('land XGAN') + 20) };
    const legs = [{ ...out!, to: { ...out!.to, limit: strip } }, home!];
    expect(faultsWith({ legs })).toContain('XMER-XGAN: 26 lb over XGAN strip landing');
    // In front it moves the take-off forward; the limit lies half way.
    const forwardIn = inches((takeOffArm(exampleFlight) + takeOffArm(loadedWith(200))) / 2);
    expect(takeOffArm(loadedWith(200))).toBeLessThan(forwardIn);
    const envelope = route.type.envelope.map((point) => ({ ...point, forwardIn }));
    expect(faultsWith({ type: limited({ envelope }) })).toMatch(/XMER-XGAN: take-off .* against forward/);
  });

  it('and weighs more than planned leaves less room on a soft strip than the plan had', () => {
    const landing = exampleFlight.sheet!.legs[0]!.rows.find(({ label }) => label.startsWith('land XGAN'))!.lb;
    // Soft, XGAN takes 20 lb more than the planned drums land with, and 26 lb less than with the heavier one.
    const [out, home] = request.load.request.legs;
    const limit = { ...out!.to.limit!, landingLb: pounds(landing + 20 + 450) };
    const legs = [{ ...out!, to: { ...out!.to, limit } }, home!];
    const aboard = (flight: typeof exampleFlight) => {
      const [stop] = flight.stops;
      return { ...flight, stops: [{ ...stop!, drumsIfSoft: 3 }] };
    };
    expect(tooManyFor(aboard(loadedWith(179, { legs })), () => 'soft')).toEqual([]);
    expect(tooManyFor(aboard(loadedWith(200, { legs })), () => 'soft')).toMatchObject([
      { place: 'XGAN', aboard: 3, mayGo: 2, words: 'XGAN is soft: 2 drums may go, 3 are aboard.' },
    ]);
  });
});

describe('the flight as it is loaded', () => {
  const flight = flightAsLoaded(exampleFlight, standsIn(planned, 'R1L', other));

  it('has the other drum on sheet and stop; totals, balance and check code follow', () => {
    expect(flight.stops[0]!.drums).toEqual(['0436', '0435', '0437']);
    const [before, after] = [exampleFlight, flight].map(({ sheet }) => sheet!.legs[0]!.totals);
    // 0434 weighs 179 kg, 395 lb; 0436 weighs 182 kg, 401 lb.
    expect([before!.loadLb, after!.loadLb]).toEqual([1189, 1195]);
    expect(after!.takeoffLb - before!.takeoffLb).toBe(6);
    expect(takeOffArm(flight)).not.toBe(takeOffArm(exampleFlight));
    expect(flight.sheet!.checkCode).not.toBe(exampleFlight.sheet!.checkCode);
  });

  it('is no news to its phone, before base has heard of it and after; another version is', () => {
    expect(isNewer(flight, exampleFlight)).toBe(false);
    const { changedFrom: _, ...atBase } = flight;
    expect(isNewer(flight, atBase)).toBe(false);
    expect(isNewer(flight, { ...atBase, version: 4 })).toBe(true);
    const third = flightAsLoaded(exampleFlight, changePlaces(planned, 'R1L', 'R1R'));
    expect(isNewer(flight, third)).toBe(true);
    expect(isNewer(exampleFlight, third)).toBe(true);
  });

  it('where base can make no sheet of the same drums it is no news either', () => {
    const { changedFrom: _, ...own } = flight;
    expect(isNewer(flight, { ...own, sheet: null, request: null, why: 'F05: no such load.' })).toBe(false);
  });
});
