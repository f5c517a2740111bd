import type { FlightPlan, PlannedFlight, PlannedLeg, PlannedStop } from '@drumline/planning';
import { decimalsOf, print } from '@drumline/units';
import { indent } from './table.js';
import { countOf, overWords, price, printDay, wholeMoney } from './words.js';

/** Flights by day and aircraft, each with why it flies, what binds and what to do when a strip is soft. */
export function flightLines(plan: FlightPlan): string[] {
  const days = [...new Set(plan.flights.map((flight) => flight.date))].sort();
  return days.flatMap((date) => {
    const flights = plan.flights.filter((flight) => flight.date === date);
    const day = flights[0]!.day;
    const offered = day <= plan.offeredDays ? '' : '  (looked ahead: not offered yet)';
    return [
      '',
      `${printDay(date)}, day ${day}${offered}`,
      ...flights.flatMap((flight) => flightText(flight, plan.currency)),
    ];
  });
}

/** One flight in a few lines; a booked flight without drums in one. */
export function flightText(flight: PlannedFlight, currency: string): string[] {
  const head = `  ${flight.id}  ${flight.aircraft}  ${flight.departs}  ${routeText(flight)}`;
  if (flight.kind === 'booked' && flight.drums === 0)
    return [
      `${head}  booked, no drums on it  ${crewText(flight)}`,
      ...(flight.needsDecision === null ? [] : [`        NEEDS A DECISION: ${flight.needsDecision}`]),
    ];
  return [
    `${head}  ${loadText(flight)}  ${crewText(flight)}  ${flight.kind === 'booked' ? 'booked' : flight.state}`,
    ...indent(
      [
        ...(flight.needsDecision === null ? [] : [`NEEDS A DECISION: ${flight.needsDecision}`]),
        `Why: ${flight.reason.text}`,
        `If declined: ${flight.reason.ifDeclined}`,
        ...flight.legs.filter((leg) => leg.drumsAboard > 0).flatMap(legText),
        ...flight.stops.flatMap(stopText),
        `Block ${print(flight.blockHours, 'h', 2)}, duty ${print(flight.dutyHours, 'h', 2)}, ramp fuel ${print(flight.rampFuelLb, 'lb')}, own fuel from ${flight.from} ${print(flight.ownFuelLitres, 'L')}.`,
        ...costText(flight, currency),
      ],
      8,
    ),
  ];
}

export function routeText(flight: PlannedFlight): string {
  return [flight.from, ...flight.legs.map((leg) => leg.to)].join(' > ');
}

function loadText(flight: PlannedFlight): string {
  if (flight.stops.length <= 1) {
    const possible = flight.legs[0]?.drumsPossible ?? 0;
    return `${countOf(flight.drums, 'drum')} of ${possible}`;
  }
  const drops = flight.stops.filter((stop) => stop.drums > 0).map((stop) => `${stop.place} ${stop.drums}`);
  return `${countOf(flight.drums, 'drum')}${drops.length > 0 ? ` (${drops.join(', ')})` : ''}`;
}

function crewText(flight: PlannedFlight): string {
  return flight.pilot === null ? 'no pilot' : `pilot ${flight.pilot}`;
}

function costText(flight: PlannedFlight, currency: string): string[] {
  const { cost } = flight;
  if (cost.total === 0) return [];
  return [
    `Cost: flight, own fuel included, ${wholeMoney(cost.flight, currency)} + fuel in the drums ${wholeMoney(cost.fuel, currency)} + handling ${wholeMoney(cost.handling, currency)} = ${wholeMoney(cost.total, currency)}; delivered ${price(cost.perLitre, currency)}.`,
  ];
}

function legText(leg: PlannedLeg): string[] {
  const aboard = `${leg.from}-${leg.to}, ${leg.surface}: ${countOf(leg.drumsAboard, 'drum')} of ${leg.drumsPossible} possible`;
  const room = leg.drumsPossible - leg.drumsAboard;
  const limit = `${leg.binding.place ? `${leg.binding.place} ` : ''}${leg.binding.name}`;
  const binds = room === 0 ? `binds ${limit}` : `${room} more would fit; tightest is ${limit}`;
  const spare = leg.binding.name === 'drum positions' ? countOf(room, 'place') : print(leg.spareLb, 'lb');
  return [
    `${aboard}; ${binds}, ${spare} spare. Positions ${leg.positions.join(' ')}.`,
    ...(leg.relax === '' ? [] : [`  ${leg.relax}`]),
  ];
}

function stopText(stop: PlannedStop): string[] {
  const { unloadOrStay: arrival } = stop;
  const weights = `${stop.place}: arrives at ${print(arrival.printedArrivalLb, 'lb')}, may leave at ${print(arrival.takeoffLimitLb, 'lb')}`;
  const leave = arrival.canLeaveLoaded
    ? 'could leave again with everything aboard'
    : `${overWords(arrival)} over, unload or stay`;
  const committal = stop.committalPoint === null ? '' : `, decide by ${stop.committalPoint}`;
  return [
    `${weights}; ${leave}. Tailwind limit ${print(stop.tailwindLimitKt, 'kt', decimalsOf(stop.tailwindLimitKt))}${committal}.`,
    `  ${stop.ifSoft}`,
  ];
}
