import type { Scenario } from '@drumline/planning';
import { each, type Finding, type Rule } from '../rule.js';

type FleetDays = Pick<Scenario, 'aircraft' | 'noFlyingDays'>;
type Approved = Pick<Scenario, 'aircraft' | 'stripLimits'>;
type FlightOfTail = Pick<Scenario['flights'][number], 'aircraft' | 'date'>;

/**
 * Flights that cannot be flown as they stand: their tail is away, nothing flies that day, or its type is not approved
 * where they land. That is news of the aircraft, the strip or the day, which must be entered whatever was booked or
 * planned before: a doubt, never a fault. The check finds each of them again and no planner flies them; docs/decisions/0021.
 */
export const flightDoubts: readonly Rule[] = [
  each('bookedFlights', ['aircraft', 'noFlyingDays'], daysOf),
  each('flights', ['aircraft', 'noFlyingDays'], daysOf),
  each('handPlan', ['aircraft', 'noFlyingDays'], daysOf),
  each('flights', ['aircraft', 'stripLimits'], approvedStops),
  each('handPlan', ['aircraft', 'stripLimits'], approvedStops),
  each('bookedFlights', ['aircraft', 'stripLimits'], approvedLegs),
];

function* daysOf(
  { aircraft: tail, date }: FlightOfTail,
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

function* approvedStops(
  { aircraft: name, stops }: Scenario['flights'][number],
  { aircraft, stripLimits }: Approved,
): Iterable<Finding> {
  const tail = aircraft.find((line) => line.tail === name);
  if (tail === undefined) return;
  for (const [index, { place }] of stops.entries())
    yield* approved(place, ['stops', index, 'place'], tail.type, stripLimits);
}

function* approvedLegs(
  { aircraft: name, legs }: Scenario['bookedFlights'][number],
  { aircraft, stripLimits }: Approved,
): Iterable<Finding> {
  const tail = aircraft.find((line) => line.tail === name);
  if (tail === undefined) return;
  for (const [index, { to }] of legs.entries())
    yield* approved(to, ['legs', index, 'to'], tail.type, stripLimits);
}

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
