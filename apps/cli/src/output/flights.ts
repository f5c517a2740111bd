import type { FlightPlan, PlannedFlight, PlannedLeg, PlannedStop } from '@drumline/planning';
import { print, printNumber } from '@drumline/units';
import { indent } from './table.js';
import { countOf, price, printDay, wholeMoney } from './words.js';

/** Flights by day and aircraft, each with why it flies, what binds and what to do when a strip is soft. */
export function flightLines(plan: FlightPlan): string[] {
  const days = [...new Set(plan.flights.map((flight) => flight.date))].sort();
  return days.flatMap((date) => {
    const flights = plan.flights.filter((flight) => flight.date === date);
    const day = flights[0]!.day;
    const offered = day <= plan.offeredDays ? '' : '  (looked ahead, not offered yet)';
    return [
      '',
      `${printDay(date)}, day ${day}${offered}`,
      ...flights.flatMap((flight) => flightText(flight, plan.currency)),
    ];
  });
}

/** One flight in a few lines. */
export function flightText(flight: PlannedFlight, currency: string): string[] {
  return [
    `  ${flight.id}  ${flight.aircraft}  ${flight.departs}  ${routeText(flight)}  ${loadText(flight)}  ${crewText(flight)}  ${flight.state}`,
    ...indent(
      [
        `Block ${print(flight.blockHours, 'h', 2)}, duty ${print(flight.dutyHours, 'h', 2)}, ramp fuel ${print(flight.rampFuelLb, 'lb')}, own fuel from ${flight.from} ${print(flight.ownFuelLitres, 'L')}.`,
        ...costText(flight, currency),
        `Why: ${flight.reason.text}`,
        `If declined: ${flight.reason.ifDeclined}`,
        ...flight.legs.filter((leg) => leg.drumsAboard > 0 || leg.drumsPossible > 0).flatMap(legText),
        ...flight.stops.flatMap(stopText),
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
    `Cost: flight ${wholeMoney(cost.flight, currency)} + fuel ${wholeMoney(cost.fuel, currency)} + handling ${wholeMoney(cost.handling, currency)} = ${wholeMoney(cost.total, currency)}; delivered ${price(cost.perLitre, currency)}.`,
  ];
}

function legText(leg: PlannedLeg): string[] {
  const aboard = `${leg.from}-${leg.to}: ${countOf(leg.drumsAboard, 'drum')} aboard of ${leg.drumsPossible} possible, surface ${leg.surface}`;
  const binds = `binds: ${leg.binding.place ? `${leg.binding.place} ` : ''}${leg.binding.name}, ${print(leg.spareLb, 'lb')} spare`;
  return [
    `${aboard}; ${binds}.`,
    ...(leg.relax === '' ? [] : [`  For one drum more: ${leg.relax}`]),
    ...(leg.positions.length > 0 ? [`  Positions: ${leg.positions.join(' ')}.`] : []),
  ];
}

function stopText(stop: PlannedStop): string[] {
  const { unloadOrStay: arrival } = stop;
  const leave = arrival.canLeaveLoaded
    ? `arrives at ${print(arrival.arrivalLb, 'lb')}, may leave at ${print(arrival.takeoffLimitLb, 'lb')}: can leave with everything aboard`
    : `arrives at ${print(arrival.arrivalLb, 'lb')}, may leave at ${print(arrival.takeoffLimitLb, 'lb')}: ${print(arrival.overLb, 'lb')} over, unload or stay`;
  const tailwind = `tailwind limit ${printNumber(stop.tailwindLimitKt)} kt`;
  const committal = stop.committalPoint === null ? '' : `, decide by ${stop.committalPoint}`;
  return [`${stop.place}: ${leave}; ${tailwind}${committal}.`, `  If soft: ${stop.ifSoft}`];
}
