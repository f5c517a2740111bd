import { inches, pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { LoadPlace } from '../aircraft-type.js';
import { exampleRequest, exampleType, withCabin } from '../example-flight.js';
import { routeLoad } from '../route-load.js';
import { checkLoad } from './check-load.js';
import { exampleDrum } from './example-load.js';
import { type CargoToPlace, placeCargo } from './place-cargo.js';
import { preparationList } from './preparation-list.js';

const seat = (id: string, armIn: number): LoadPlace => ({
  id,
  armIn: inches(armIn),
  limitLb: pounds(250),
  unloadOrder: 9,
});
const type = withCabin({ seats: [seat('S1', 160), seat('S2', 160)] });
const request = { ...exampleRequest(['BASE', 'NEAR', 'BASE']), type };
const load = { request, route: routeLoad(request) };

const item = (
  kind: CargoToPlace['kind'],
  weight: number,
  changes: Partial<CargoToPlace> = {},
): CargoToPlace => ({
  name: kind,
  weightLb: pounds(weight),
  firstLeg: 0,
  lastLeg: 0,
  kind,
  divisible: false,
  ...changes,
});
const placesOf = (items: readonly CargoToPlace[], drums = 0) => {
  const named = Array.from({ length: drums }, (_, i) => exampleDrum(`044${i}`));
  const placed = placeCargo(load, items, named);
  if (!placed.found) return placed.why;
  expect(checkLoad({ ...load, cargo: placed.cargo, drums: placed.drums }).faults).toEqual([]);
  return placed.cargo.map(({ name, place, weightLb }) => `${name} ${weightLb} ${place}`);
};

describe('places for passengers and freight', () => {
  it('passengers take seats, freight its net', () => {
    expect(placesOf([item('passenger', 190), item('passenger', 200), item('freight', 100)])).toEqual([
      'passenger 190 S1',
      'passenger 200 S2',
      'freight 100 NET',
    ]);
  });

  it('a seat is used again on another leg', () => {
    const home = { firstLeg: 1, lastLeg: 1 };
    expect(
      placesOf([item('passenger', 190), item('passenger', 190), item('passenger', 190, home)]),
    ).toHaveLength(3);
    expect(placesOf([0, 1, 2].map(() => item('passenger', 190)))).toBe('passenger: no seat is free for it');
  });

  it('freight for which the nets have no room takes drum positions, and the drums the others', () => {
    const crate = item('freight', 400, { name: 'crate' });
    const placed = placeCargo(load, [item('freight', 500), crate], [exampleDrum('0447')]);
    if (!placed.found) throw new Error(placed.why);
    const where = placed.cargo[1]!.place!;
    expect(where).toMatch(/^R/);
    expect(placed.drums[0]!.position).not.toBe(where);
  });

  it('freight that may be spread fills one place after the other', () => {
    expect(placesOf([item('freight', 700, { divisible: true })])).toEqual([
      'freight 600 NET',
      'freight 100 R1L',
    ]);
    expect(placesOf([item('freight', 700)])).toBe('freight: no place is free for it');
  });

  it('seven drums for six positions less one with a crate in it say so', () => {
    const crates = [item('freight', 600), item('freight', 400, { name: 'crate' })];
    expect(placesOf(crates, 6)).toMatch(/^No positions for 6 drums/);
  });
});

describe('preparation list of a cabin', () => {
  const list = preparationList(exampleType, 'drums', load.route, request.drum);

  it('says what is loaded first: the row furthest from the door', () => {
    expect(list.positions.map(({ id, loadOrder, unloadOrder }) => [id, loadOrder, unloadOrder])).toEqual([
      ['R1L', 1, 3],
      ['R1R', 1, 3],
      ['R2L', 2, 2],
      ['R2R', 2, 2],
      ['R3L', 3, 1],
      ['R3R', 3, 1],
    ]);
  });

  it('gives positions that balance for every number of drums', () => {
    expect(list.standings.map(({ drums, positions }) => [drums, positions.length])).toEqual(
      [1, 2, 3, 4, 5, 6].map((drums) => [drums, drums]),
    );
  });

  it('says from which number on there are none', () => {
    const narrow = {
      ...exampleType,
      envelope: exampleType.envelope.map((point) => ({ ...point, aftIn: inches(186.5) })),
    };
    const { standings } = preparationList(narrow, 'drums', load.route, request.drum);
    expect(standings.at(-1)).toMatchObject({ drums: 6, positions: [] });
    expect(standings.at(-1)!.why).toContain('take fewer');
    expect(standings[0]!.why).toBeNull();
  });
});
