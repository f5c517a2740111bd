import { describe, expect, it } from 'vitest';
import { exampleRequest } from '../example-flight.js';
import { exampleLoad, standing } from './example-load.js';
import { payloadBars } from './payload-bar.js';

const there = ['BASE', 'STRIP', 'BASE'];
const positions = ['R1L', 'R1R', 'R2L', 'R2R', 'R3L', 'R3R'];
const drums = (count: number) => positions.slice(0, count).map((place, i) => standing(`044${i}`, place));

describe('payload bar', () => {
  it('has a block for each drum, and its blocks add up to what each limit is measured from', () => {
    const [out, home] = payloadBars(exampleLoad(there, drums(3)));
    expect(out!.load.map(({ name, lb, isDrum }) => [name, lb, isDrum])).toEqual([
      ['0440', 397, true],
      ['0441', 397, true],
      ['0442', 397, true],
    ]);
    const zeroFuel = out!.operatingLb + 3 * 397;
    const weight = { 'zero fuel': zeroFuel, landing: zeroFuel + out!.fuelOnLandingLb };
    const takeoff = weight.landing + out!.tripLb;
    for (const { moment, limitLb, spareLb } of out!.limits)
      expect(limitLb - spareLb).toBe({ ...weight, 'take-off': takeoff }[moment]);
    expect(home!.load).toEqual([]);
  });

  it('names one binding limit, and beside it what the strip would allow soft', () => {
    const [out] = payloadBars(exampleLoad(there, drums(3)));
    const binding = out!.limits.filter(({ binds }) => binds);
    expect(binding.map(({ name, place, surface }) => [name, place, surface])).toEqual([
      ['strip landing limit', 'STRIP', 'dry'],
    ]);
    const soft = out!.limits.find(
      ({ name, surface }) => name === 'strip landing limit' && surface === 'soft',
    );
    expect(soft!.limitLb).toBeLessThan(binding[0]!.limitLb);
  });

  it('a surface that nobody knows counts as soft: the soft landing binds where it leaves the least', () => {
    const load = exampleLoad(there, drums(3));
    const [unknown] = payloadBars(load, { STRIP: 'unknown' });
    expect(unknown!.limits.filter(({ binds }) => binds).map(({ name, surface }) => [name, surface])).toEqual([
      ['strip landing limit', 'soft'],
    ]);
    const spares = unknown!.limits
      .filter(({ name }) => name !== 'unload or stay')
      .map(({ spareLb }) => spareLb);
    expect(unknown!.limits.find(({ binds }) => binds)!.spareLb).toBe(Math.min(...spares));
    const [dry] = payloadBars(load, { STRIP: 'dry 14 June 05:58' });
    expect(dry).toEqual(payloadBars(load)[0]);
  });

  it('standing places bind where they bind in the plan of the same route; an empty leg is bound by its weights', () => {
    const load = exampleLoad(there, drums(6));
    const [out, home] = payloadBars(load);
    expect(load.route.legs[0]!.binding.name).toBe('drum positions');
    expect(out!.boundByCount).toEqual({ name: 'drum positions', aboard: 6, most: 6 });
    expect(home!.boundByCount).toBeNull();
  });

  it('a soft strip that is too weak says how many drums less, or which report would do', () => {
    const request = exampleRequest(there);
    const legs = request.legs.map((leg) => ({
      ...leg,
      to: leg.to.place.code === 'STRIP' ? { ...leg.to, surface: 'soft' as const } : leg.to,
    }));
    const [out] = payloadBars(exampleLoad(there, drums(6), { ...request, legs }));
    expect(out!.limits.find(({ binds }) => binds)).toMatchObject({ surface: 'soft', holds: false });
    expect(out!.boundByCount).toBeNull();
    expect(out!.relax).toMatch(/^\d drums? less, or STRIP reported damp or dry$/);
  });
});
