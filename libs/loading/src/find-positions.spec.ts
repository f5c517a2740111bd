import { inches, pounds } from '@drumline/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AircraftType, LoadPlace } from './aircraft-type.js';
import { type Cargo, type DrumAboard, type FlightCabin, type PlacedDrum, planningDrums } from './cabin.js';
import { checkBalance } from './check-balance.js';
import { exampleCabin, exampleRequest, exampleType, withCabin } from './example-flight.js';
import { findPositions } from './find-positions.js';

const drum = exampleRequest(['BASE', 'STRIP']).drum;
const twoStops = ['BASE', 'NEAR', 'FAR', 'BASE'];

const standingPlaces = (drops: readonly number[], cabin = exampleCabin(twoStops)): string[] => {
  const positions = findPositions(cabin, planningDrums(drops, drum));
  if (!positions.found) throw new Error(positions.why);
  return positions.drums.map(({ id, position }) => `${id} ${position}`);
};

describe('positions of drums', () => {
  it("the first stop's drums stand at the door, the last stop's in front", () => {
    expect(standingPlaces([2, 2])).toEqual(['1.1 R2L', '1.2 R2R', '2.1 R1L', '2.2 R1R']);
  });

  it('two drums fill one row rather than one side of two', () => {
    expect(standingPlaces([2])).toEqual(['1.1 R1L', '1.2 R1R']);
  });

  it('the heavy drum stands in front where the balance asks for it', () => {
    const narrow = withCabin(
      { drumPositions: exampleType.configurations[0]!.drumPositions.filter(({ id }) => /R1L|R3L/.test(id)) },
      { ...exampleType, envelope: exampleType.envelope.map((point) => ({ ...point, aftIn: inches(188.9) })) },
    );
    // Zero fuel: 188.2 in with the heavy drum in front, 189.2 in with it aft.
    const drums = [350, 440].map((weightLb) => ({
      id: `${weightLb}`,
      weightLb: pounds(weightLb),
      offAfterLeg: 0,
    }));
    const positions = findPositions(exampleCabin(twoStops, narrow), drums);
    expect(positions.found && positions.drums.map(({ position }) => position)).toEqual(['R3L', 'R1L']);
  });

  it('says that tipping was not checked where the tip arm is not published', () => {
    const positions = findPositions(exampleCabin(twoStops), planningDrums([1], drum));
    expect(positions.found && positions.tailTip).toBe('not published, not checked');
  });

  it('freight without a place is an answer, not a guess', () => {
    const panels = { name: 'panels', weightLb: pounds(300), place: null, firstLeg: 0, lastLeg: 0 };
    const cabin = { ...exampleCabin(twoStops), cargo: [panels] };
    expect(findPositions(cabin, planningDrums([2], drum))).toEqual({
      found: false,
      why: 'BASE-NEAR: panels, 300 lb: no place in the cabin is given, name one',
    });
  });

  it('no drum stands where freight stands', () => {
    const crate = { name: 'crate', weightLb: pounds(300), place: 'R1L', firstLeg: 0, lastLeg: 2 };
    const cabin = { ...exampleCabin(twoStops), cargo: [crate] };
    expect(standingPlaces([0, 1], cabin)).toEqual(['2.1 R1R']);
  });

  it('more drums than positions have none', () => {
    expect(findPositions(exampleCabin(twoStops), planningDrums([4, 3], drum))).toEqual({
      found: false,
      why: '7 drums for 6 positions',
    });
  });

  it('says when only the order of the stops stands in the way', () => {
    const doorInFront = {
      ...exampleType,
      envelope: exampleType.envelope.map((point) => ({ ...point, aftIn: inches(188.3) })),
      configurations: exampleType.configurations.map((cabin) => ({
        ...cabin,
        drumPositions: cabin.drumPositions.map((place) => ({ ...place, unloadOrder: 4 - place.unloadOrder })),
      })),
    };
    // The far drums would stand in row 2, and alone there they are too far aft: 188.7 in at zero fuel.
    const positions = findPositions(exampleCabin(twoStops, doorInFront), planningDrums([2, 2], drum));
    expect(positions).toEqual({
      found: false,
      why: "No positions for 4 drums balance unless a later stop's drums stand in the way; take fewer, or turn the stops round",
    });
  });

  it('says when the aeroplane would sit on its tail while unloading', () => {
    const cabin = exampleCabin(twoStops, { ...exampleType, tipArmIn: inches(185.2) });
    const positions = findPositions(cabin, planningDrums([6], drum));
    expect(positions).toEqual({
      found: false,
      why: 'No positions for 6 drums keep the nose wheel on the ground while unloading; take fewer, or a tail stand',
    });
  });
});

/* Small flights of three legs with drums, and sometimes freight; the balance is tight: some loadings hold, some do not. */
const places: fc.Arbitrary<LoadPlace[]> = fc
  .array(
    fc.record({
      armIn: fc.constantFrom(170, 190, 215, 240).map(inches),
      limitLb: fc.constantFrom(390, 450).map(pounds),
      unloadOrder: fc.integer({ min: 1, max: 3 }),
    }),
    { minLength: 3, maxLength: 5 },
  )
  .map((list) => list.map((place, i) => ({ id: `P${i}`, ...place })));

const types: fc.Arbitrary<AircraftType> = fc
  .record({
    drumPositions: places,
    operatingArmIn: fc.integer({ min: 182, max: 198 }).map(inches),
    aftIn: fc.integer({ min: 190, max: 200 }).map(inches),
    tipArmIn: fc.option(fc.integer({ min: 187, max: 203 }).map(inches)),
  })
  .map(({ drumPositions, operatingArmIn, aftIn, tipArmIn }) =>
    withCabin(
      { drumPositions, operatingArmIn },
      {
        ...exampleType,
        tipArmIn,
        envelope: exampleType.envelope.map((point) => ({ ...point, aftIn })),
      },
    ),
  );

const drumLists: fc.Arbitrary<DrumAboard[]> = fc
  .array(
    fc.record({
      weightLb: fc.constantFrom(380, 395, 397).map(pounds),
      offAfterLeg: fc.integer({ min: 0, max: 2 }),
    }),
    { minLength: 1, maxLength: 4 },
  )
  .map((list) => list.map((drum, i) => ({ id: `D${i}`, ...drum })));

const cargoLists: fc.Arbitrary<Cargo[]> = fc.array(
  fc.record({
    name: fc.constant('freight'),
    weightLb: fc.integer({ min: 10, max: 200 }).map(pounds),
    place: fc.constantFrom('NET', 'P0', 'P1'),
    firstLeg: fc.integer({ min: 0, max: 1 }),
    lastLeg: fc.integer({ min: 1, max: 2 }),
  }),
  { maxLength: 1 },
);

const smallFlights: fc.Arbitrary<{ cabin: FlightCabin; drums: DrumAboard[] }> = fc
  .record({ type: types, drums: drumLists, cargo: cargoLists })
  .map(({ type, drums, cargo }) => ({
    cabin: { ...exampleCabin(['BASE', 'NEAR', 'FAR', 'BASE'], type), cargo },
    drums,
  }));

/** Every way to stand the drums, tried one by one with the full check. */
function everyStanding(places: readonly string[], drums: readonly DrumAboard[]): PlacedDrum[][] {
  const [first, ...others] = drums;
  if (!first) return [[]];
  return places.flatMap((position) =>
    everyStanding(
      places.filter((place) => place !== position),
      others,
    ).map((standing) => [{ ...first, position }, ...standing]),
  );
}

describe('laws of positions', () => {
  it('positions found pass the check of the balance', () => {
    fc.assert(
      fc.property(smallFlights, ({ cabin, drums }) => {
        const positions = findPositions(cabin, drums);
        if (positions.found) expect(checkBalance(cabin, positions.drums).faults).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it('trying every standing finds one exactly when the search does, and none with fewer moves', () => {
    fc.assert(
      fc.property(smallFlights, ({ cabin, drums }) => {
        const places = cabin.type.configurations[0]!.drumPositions;
        const all = everyStanding(
          places.map(({ id }) => id),
          drums,
        );
        const holding = all.filter((standing) => checkBalance(cabin, standing).holds);
        expect(findPositions(cabin, drums).found).toBe(holding.length > 0);
        const given = all[0];
        if (!given) return;
        const positions = findPositions(
          cabin,
          drums,
          new Map(given.map(({ id, position }) => [id, position])),
        );
        if (!positions.found) return;
        const moved = (standing: readonly PlacedDrum[]) =>
          standing.filter(({ position }, i) => position !== given[i]!.position).length;
        const row = new Map(places.map(({ id, armIn }) => [id, armIn]));
        const uneven = (standing: readonly PlacedDrum[]) =>
          [0, 1, 2].reduce(
            (sum, leg) =>
              sum +
              unevenRows(
                standing.filter((one) => one.offAfterLeg >= leg),
                row,
              ),
            0,
          );
        const best = holding
          .map((standing) => [uneven(standing), moved(standing)] as const)
          .sort((a, b) => a[0] - b[0] || a[1] - b[1])[0]!;
        expect([uneven(positions.drums), positions.moved]).toEqual(best);
      }),
      { numRuns: 200 },
    );
  });
});

function unevenRows(standing: readonly PlacedDrum[], row: ReadonlyMap<string, number>): number {
  const arms = [...new Set(row.values())];
  return arms.filter((arm) => {
    const size = [...row.values()].filter((one) => one === arm).length;
    const taken = standing.filter(({ position }) => row.get(position) === arm).length;
    return taken > 0 && taken < size;
  }).length;
}
