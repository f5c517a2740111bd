import { kilogramsPerLitre } from '@drumline/units';
import { expect, it } from 'vitest';
import { exampleRequest } from './example-flight.js';
import { ownFuel } from './own-fuel.js';
import { routeLoad } from './route-load.js';

const density = kilogramsPerLitre(0.8);
const litresOf = (fuelLb: number) => (fuelLb * 0.45359237) / 0.8;

it('Whose stock own fuel draws: taxi and legs come out of the bulk of the base', () => {
  // 30 + 170 + 170 lb.
  const own = ownFuel(routeLoad(exampleRequest(['BASE', 'STRIP', 'BASE'])), density);
  expect(own.fromBaseLitres).toBeCloseTo(litresOf(370), 9);
  expect(own.uplifts).toEqual([]);
});

it('Whose stock own fuel draws: a planned uplift is a draw on its cache, and the base gives the rest', () => {
  const request = exampleRequest(['BASE', 'STRIP', 'BASE']);
  const legs = request.legs.map((leg, i) => ({ ...leg, upliftOnArrival: i === 0 }));
  // Ramp 450, landing at STRIP with 250; 170 + 17 + 225 = 412, up to 420: 170 lb uplifted.
  const own = ownFuel(routeLoad({ ...request, legs }), density);
  expect(own.uplifts).toHaveLength(1);
  expect(own.uplifts[0]!.place).toBe('STRIP');
  expect(own.uplifts[0]!.litres).toBeCloseTo(litresOf(170), 9);
  expect(own.fromBaseLitres).toBeCloseTo(litresOf(200), 9);
});
