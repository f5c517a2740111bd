import type { Scenario } from '@drumline/planning';
import { across, each, type Finding, type Rule } from './rule.js';

type FleetDays = Pick<Scenario, 'aircraft' | 'noFlyingDays'>;

/** Flights that stand can be flown by the tail named, from its home, on a day it is there. */
export const flightRules: readonly Rule[] = [
  each('bookedFlights', ['aircraft', 'noFlyingDays'], daysOf),
  each('flights', ['aircraft', 'noFlyingDays'], daysOf),
  each('handPlan', ['aircraft', 'noFlyingDays'], daysOf),
  each('flights', ['aircraft', 'stripLimits'], standingRoute),
  each('handPlan', ['aircraft', 'stripLimits'], standingRoute),
  each('bookedFlights', ['aircraft', 'stripLimits'], bookedRoute),
  each('bookedFlights', ['aircraft', 'aircraftTypes'], bookedCabin),
  each('slings', [], function* ({ from, to }) {
    if (from === to) yield [['to'], `the sling goes from ${from} to ${from}.`, 'Correct one of the two.'];
  }),
  across(['flights', 'bookedFlights'], function* ({ flights, bookedFlights }) {
    for (const [index, { id }] of flights.entries())
      if (bookedFlights.some((booked) => booked.id === id))
        yield [
          ['flights', index, 'id'],
          `a booked flight has the id ${id} too.`,
          'Give each flight its own id.',
        ];
  }),
];

function* daysOf(
  { aircraft: tail, date }: { readonly aircraft: string; readonly date: string },
  { aircraft, noFlyingDays }: FleetDays,
): Iterable<Finding> {
  if (noFlyingDays.includes(date))
    yield [
      ['date'],
      `${date} is a day without flying.`,
      'Move the flight, or take the day out of noFlyingDays.',
    ];
  const away = aircraft
    .find((line) => line.tail === tail)
    ?.absences.find(({ from, until }) => from <= date && date <= until);
  if (away !== undefined)
    yield [
      ['aircraft'],
      `${tail} is away from ${away.from} to ${away.until} (${away.reason}).`,
      'Move the flight, name another tail, or shorten the absence.',
    ];
}

function* standingRoute(
  flight: Scenario['flights'][number],
  { aircraft, stripLimits }: Pick<Scenario, 'aircraft' | 'stripLimits'>,
): Iterable<Finding> {
  const tail = aircraft.find((line) => line.tail === flight.aircraft);
  if (tail === undefined) return;
  if (flight.from !== tail.home) yield wrongHome(['from'], 'leaves', flight.from, tail);
  for (const [index, stop] of flight.stops.entries()) {
    yield* approved(stop.place, ['stops', index, 'place'], tail.type, stripLimits);
    if (stop.drums === 0)
      yield [
        ['stops', index, 'drums'],
        `the flight leaves no drum at ${stop.place}.`,
        'Give the drums, or take the stop out.',
      ];
  }
}

function* bookedRoute(
  { aircraft: name, legs }: Scenario['bookedFlights'][number],
  { aircraft, stripLimits }: Pick<Scenario, 'aircraft' | 'stripLimits'>,
): Iterable<Finding> {
  const tail = aircraft.find((line) => line.tail === name);
  for (const [index, leg] of legs.entries()) {
    const before = legs[index - 1];
    if (before !== undefined && before.to !== leg.from)
      yield [
        ['legs', index, 'from'],
        `the leg before it ends at ${before.to}.`,
        `Start at ${before.to}, or correct that leg.`,
      ];
    if (tail !== undefined) yield* approved(leg.to, ['legs', index, 'to'], tail.type, stripLimits);
  }
  if (tail === undefined) return;
  if (legs[0]!.from !== tail.home) yield wrongHome(['legs', 0, 'from'], 'leaves', legs[0]!.from, tail);
  const last = legs.length - 1;
  if (legs[last]!.to !== tail.home) yield wrongHome(['legs', last, 'to'], 'ends at', legs[last]!.to, tail);
}

function* bookedCabin(
  { aircraft: name, configuration, legs }: Scenario['bookedFlights'][number],
  { aircraft, aircraftTypes }: Pick<Scenario, 'aircraft' | 'aircraftTypes'>,
): Iterable<Finding> {
  const type = aircraftTypes.find(({ id }) => id === aircraft.find(({ tail }) => tail === name)?.type);
  if (type === undefined) return;
  const cabin = type.configurations.find(({ id }) => id === configuration);
  if (cabin === undefined) {
    const ids = type.configurations.map(({ id }) => id).join(', ');
    yield [['configuration'], `type ${type.id} has no configuration ${configuration}.`, `Use one of ${ids}.`];
    return;
  }
  for (const [index, leg] of legs.entries()) {
    if (leg.passengers > cabin.seats.length)
      yield [
        ['legs', index, 'passengers'],
        `${leg.passengers} passengers; configuration ${configuration} has seats for ${cabin.seats.length}.`,
        'Correct the passengers, or choose another configuration.',
      ];
    if (leg.passengers > 0 !== leg.passengersKg > 0)
      yield [
        ['legs', index, 'passengersKg'],
        `${leg.passengers} passengers weigh ${leg.passengersKg} kg.`,
        'Give both, or neither.',
      ];
    if (leg.freightKg > 0 && cabin.freightPlaces.length === 0)
      yield [
        ['legs', index, 'freightKg'],
        `configuration ${configuration} has no place for freight.`,
        'Add freight places to it, or choose another configuration.',
      ];
  }
}

const wrongHome = (
  path: readonly PropertyKey[],
  does: string,
  place: string,
  { tail, home }: Scenario['aircraft'][number],
): Finding => [
  path,
  `the flight ${does} ${place}, but ${tail} is at home in ${home}.`,
  `Write ${home}, or name another tail.`,
];

function* approved(
  place: string,
  path: readonly PropertyKey[],
  type: string,
  stripLimits: Scenario['stripLimits'],
): Iterable<Finding> {
  const there = stripLimits.filter((limit) => limit.place === place);
  if (there.length > 0 && !there.some((limit) => limit.type === type))
    yield [
      path,
      `type ${type} is not approved at ${place}.`,
      'Name a tail of an approved type, or add its strip limits.',
    ];
}
