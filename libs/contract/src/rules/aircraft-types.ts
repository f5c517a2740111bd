import type { AircraftType, CabinConfiguration } from '@drumline/loading';
import { printFigure } from './print-figure.js';
import { each, type Finding, type Rule } from './rule.js';

/** The figures of a type fit together, and every strip limit fits its type. */
export const aircraftTypeRules: readonly Rule[] = [
  each('aircraftTypes', [], (type) => [...weights(type), ...envelope(type), ...cabins(type)]),
  each('stripLimits', ['aircraftTypes'], function* (limit, { aircraftTypes }) {
    const type = aircraftTypes.find(({ id }) => id === limit.type);
    if (type === undefined) return;
    yield* atMost(
      limit.takeoffLb,
      type.maxTakeoffLb,
      ['takeoffLb'],
      `type ${type.id}'s maximum take-off weight`,
    );
    yield* atMost(
      limit.landingLb,
      type.maxLandingLb,
      ['landingLb'],
      `type ${type.id}'s maximum landing weight`,
    );
  }),
  each('stripLimits', [], function* ({ whenSoft, takeoffLb, landingLb }) {
    if (whenSoft === 'closed') return;
    yield* atMost(
      whenSoft.takeoffLessLb,
      takeoffLb,
      ['whenSoft', 'takeoffLessLb'],
      'the take-off limit it is taken off',
    );
    yield* atMost(
      whenSoft.landingLessLb,
      landingLb,
      ['whenSoft', 'landingLessLb'],
      'the landing limit it is taken off',
    );
  }),
];

function* atMost(
  figureLb: number,
  mostLb: number,
  path: readonly PropertyKey[],
  what: string,
): Iterable<Finding> {
  if (figureLb > mostLb)
    yield [
      path,
      `${printFigure(figureLb, 'lb')} is above ${what}, ${printFigure(mostLb, 'lb')}.`,
      'Correct one of the two.',
    ];
}

function* weights(type: AircraftType): Iterable<Finding> {
  yield* atMost(type.maxLandingLb, type.maxTakeoffLb, ['maxLandingLb'], 'the maximum take-off weight');
  yield* atMost(type.maxZeroFuelLb, type.maxTakeoffLb, ['maxZeroFuelLb'], 'the maximum take-off weight');
  for (const [index, cabin] of type.configurations.entries())
    yield* atMost(
      cabin.operatingWeightLb,
      type.maxZeroFuelLb,
      ['configurations', index, 'operatingWeightLb'],
      'the maximum zero-fuel weight',
    );
}

function* envelope(type: AircraftType): Iterable<Finding> {
  for (const [index, point] of type.envelope.entries()) {
    const before = type.envelope[index - 1];
    if (before !== undefined && point.weightLb <= before.weightLb)
      yield [
        ['envelope', index, 'weightLb'],
        `${printFigure(point.weightLb, 'lb')} is not above the point before it, ${printFigure(before.weightLb, 'lb')}.`,
        'Put the points in order of rising weight.',
      ];
    if (point.forwardIn > point.aftIn)
      yield [
        ['envelope', index, 'forwardIn'],
        `the forward limit, ${printFigure(point.forwardIn, 'in')}, is behind the aft limit, ${printFigure(point.aftIn, 'in')}.`,
        'Swap or correct them.',
      ];
  }
}

function* cabins(type: AircraftType): Iterable<Finding> {
  const ids = type.configurations.map(({ id }) => id);
  yield* twice(ids, 'configuration', (index) => ['configurations', index, 'id']);
  const forDrums = type.configurations.findIndex(({ id }) => id === type.drumConfiguration);
  if (forDrums < 0)
    yield [
      ['drumConfiguration'],
      `type ${type.id} has no configuration ${type.drumConfiguration}.`,
      `Use one of ${ids.join(', ')}.`,
    ];
  else if (type.configurations[forDrums]!.drumPositions.length === 0)
    yield [
      ['configurations', forDrums, 'drumPositions'],
      'the drum configuration has no position for a drum.',
      'Add the positions with their arms and floor limits.',
    ];
  for (const [index, cabin] of type.configurations.entries()) yield* places(cabin, index);
}

const places = (cabin: CabinConfiguration, index: number): Finding[] =>
  (['drumPositions', 'seats', 'freightPlaces'] as const).flatMap((kind) =>
    twice(
      cabin[kind].map(({ id }) => id),
      'place',
      (place) => ['configurations', index, kind, place, 'id'],
    ),
  );

const twice = (
  ids: readonly string[],
  what: string,
  pathOf: (index: number) => readonly PropertyKey[],
): Finding[] =>
  ids.flatMap((id, index) =>
    ids.indexOf(id) < index
      ? [[pathOf(index), `${what} ${id} stands twice.`, 'Give each its own id.'] as const]
      : [],
  );
