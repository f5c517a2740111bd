import type { Scenario } from '@drumline/planning';
import { across, each, type Finding, type Rule } from './rule.js';

/** Flights are whole: from the home of the tail named and back, with a cabin that holds what they carry. */
export const flightRules: readonly Rule[] = [
  each('flights', ['aircraft'], standingRoute),
  each('handPlan', ['aircraft'], standingRoute),
  each('bookedFlights', ['aircraft'], bookedRoute),
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

function* standingRoute(
  flight: Scenario['flights'][number],
  { aircraft }: Pick<Scenario, 'aircraft'>,
): Iterable<Finding> {
  const tail = aircraft.find((line) => line.tail === flight.aircraft);
  if (tail === undefined) return;
  if (flight.from !== tail.home) yield wrongHome(['from'], 'leaves', flight.from, tail);
  for (const [index, stop] of flight.stops.entries())
    if (stop.drums === 0)
      yield [
        ['stops', index, 'drums'],
        `the flight leaves no drum at ${stop.place}.`,
        'Give the drums, or take the stop out.',
      ];
}

function* bookedRoute(
  { aircraft: name, legs }: Scenario['bookedFlights'][number],
  { aircraft }: Pick<Scenario, 'aircraft'>,
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
