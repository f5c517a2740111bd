import { routeLoad } from '@drumline/loading';
import { describe, expect, it } from 'vitest';
import { flight, payloadRows } from './loading-tables.js';

const approved = payloadRows.filter((row) => row.approved);

describe('payload of every base, strip and type of the invented territory', () => {
  it('the table has 66 rows, 8 of them not approved', () => {
    expect(payloadRows).toHaveLength(66);
    expect(approved).toHaveLength(58);
  });

  it.each(payloadRows.filter((row) => !row.approved))('type $type may not go to $strip from $base', (row) => {
    const load = routeLoad(flight(row.type, [row.base, row.strip, row.base]));
    expect(load.flyable).toBe(false);
    expect(load.why).toBe(`${row.strip}: type ${row.type} is not approved there`);
    expect(load.legs[0]!.drums).toBe(0);
  });

  it.each(approved)('drums on a leg: type $type, $base to $strip, dry', (row) => {
    const load = routeLoad(flight(row.type, [row.base, row.strip, row.base]));
    expect(load.flyable).toBe(true);
    expect(load.legs[0]!.drums).toBe(row.drumsDry);
    expect(load.legs[0]!.binding.name).toBe(row.limitDry);
    expect(Math.abs(load.legs[0]!.payloadKg - row.payloadDryKg)).toBeLessThanOrEqual(5);
    expect(load.unloadOrStay.map(({ canLeaveLoaded }) => canLeaveLoaded)).toEqual([row.canLeaveLoaded]);
  });

  it.each(approved)('drums on a leg: type $type, $base to $strip, strip soft and base dry', (row) => {
    const load = routeLoad(flight(row.type, [row.base, row.strip, row.base], { [row.strip]: 'soft' }));
    expect(load.legs[0]!.drums).toBe(row.drumsSoft);
    expect(load.legs[0]!.binding.name).toBe(row.limitSoft);
    expect(load.flyable).toBe(row.limitSoft !== 'closed when soft');
  });

  it.each(approved)('fuel, time and cost: type $type, $base to $strip and back', (row) => {
    const load = routeLoad(flight(row.type, [row.base, row.strip, row.base]));
    expect(Math.abs(load.rampFuelLb - row.rampFuelLb)).toBeLessThanOrEqual(10);
    expect(Math.abs(load.blockHours - row.blockHours)).toBeLessThanOrEqual(0.01);
    expect(Math.abs(load.cost / 100 - row.flightCostCr)).toBeLessThanOrEqual(3);
  });
});
