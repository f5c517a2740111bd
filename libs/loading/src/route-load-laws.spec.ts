import { inches, kilograms, nauticalMiles, pounds } from '@drumline/units';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { planningDrums } from './cabin.js';
import { exampleRequest, exampleType, withCabin } from './example-flight.js';
import { findPositions } from './find-positions.js';
import { type LegLoad, type RouteRequest, routeLoad } from './route-load.js';

const flights = fc
  .record({
    distancesNm: fc.array(fc.integer({ min: 20, max: 250 }), { minLength: 1, maxLength: 4 }),
    takeoffLb: fc.integer({ min: 5500, max: 8000 }).map(pounds),
    landingLb: fc.integer({ min: 5300, max: 7800 }).map(pounds),
    lessLb: fc.integer({ min: 0, max: 900 }).map(pounds),
    operatingArmIn: fc.integer({ min: 180, max: 198 }).map(inches),
    aftIn: fc.integer({ min: 186, max: 200 }).map(inches),
    tipArmIn: fc.option(fc.integer({ min: 190, max: 205 }).map(inches)),
  })
  .map(({ distancesNm, takeoffLb, landingLb, lessLb, operatingArmIn, aftIn, tipArmIn }): RouteRequest => {
    const places = ['BASE', ...distancesNm.slice(1).map((_, i) => `S${i}`), 'HOME'];
    const request = exampleRequest(places);
    const limit = { takeoffLb, landingLb, whenSoft: { takeoffLessLb: lessLb, landingLessLb: lessLb } };
    const withLimit = (end: RouteRequest['legs'][number]['from']) => ({
      ...end,
      limit: { ...end.limit!, ...limit },
    });
    return {
      ...request,
      type: withCabin(
        { operatingArmIn },
        { ...exampleType, tipArmIn, envelope: exampleType.envelope.map((point) => ({ ...point, aftIn })) },
      ),
      legs: request.legs.map((leg, i) => ({
        ...leg,
        from: withLimit(leg.from),
        to: withLimit(leg.to),
        distanceNm: nauticalMiles(distancesNm[i]!),
      })),
    };
  });

const onLegs = (
  request: RouteRequest,
  changes: (leg: RouteRequest['legs'][number]) => object,
): RouteRequest => ({
  ...request,
  legs: request.legs.map((leg) => ({ ...leg, ...changes(leg) })),
});

const weightRooms = ({ limits }: LegLoad): Map<string, number> =>
  new Map(
    limits
      .filter(({ name }) => name.includes('weight') || name.startsWith('strip'))
      .map((limit) => [limit.name, limit.roomLb]),
  );

it('Drums on a leg: freight never widens the room of a weight limit', () => {
  fc.assert(
    fc.property(flights, fc.integer({ min: 0, max: 500 }), (request, freightKg) => {
      const without = routeLoad(request).legs.map(weightRooms);
      const withFreight = routeLoad(onLegs(request, () => ({ freightKg: kilograms(freightKg) }))).legs.map(
        weightRooms,
      );
      withFreight.forEach((rooms, i) => {
        expect([...rooms.keys()].sort()).toEqual([...without[i]!.keys()].sort());
        for (const [name, roomLb] of rooms) expect(roomLb).toBeLessThanOrEqual(without[i]!.get(name)!);
      });
    }),
  );
});

it('Surface states: a soft surface never gives more drums than a dry one, and never opens a flight', () => {
  fc.assert(
    fc.property(flights, fc.constantFrom('BASE', 'S0', 'S1', 'HOME'), (request, softPlace) => {
      const soften = (end: RouteRequest['legs'][number]['from']) =>
        end.place.code === softPlace ? { ...end, surface: 'soft' as const } : end;
      const dry = routeLoad(request);
      const soft = routeLoad(onLegs(request, ({ from, to }) => ({ from: soften(from), to: soften(to) })));
      soft.legs.forEach(({ drums }, i) => {
        expect(drums).toBeLessThanOrEqual(dry.legs[i]!.drums);
      });
      if (soft.flyable) expect(dry.flyable).toBe(true);
    }),
  );
});

it('Drums on a leg: any number up to the capacity of the first leg has positions when all come out at its end', () => {
  fc.assert(
    fc.property(flights, (request) => {
      const load = routeLoad(request);
      if (!load.flyable) return;
      const cabin = { type: request.type, configuration: 'drums', fuel: load, cargo: [] };
      for (let drums = 0; drums <= load.legs[0]!.drums; drums++)
        expect(findPositions(cabin, planningDrums([drums], request.drum)).found).toBe(true);
      const oneMore = load.legs[0]!.drums + 1;
      if (load.legs[0]!.binding.name === 'balance')
        expect(findPositions(cabin, planningDrums([oneMore], request.drum)).found).toBe(false);
    }),
  );
});
