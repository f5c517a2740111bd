import { type Rule, unique } from './rule.js';

const pair = (a: string, b: string): string => [a, b].sort().join(' - ');

/** Everything stands once. */
export const duplicateRules: readonly Rule[] = [
  unique('places', 'place', (line) => line.code),
  unique('distances', 'the distance', (line) => pair(...line.between)),
  unique('weather', 'the weather of', (line) => line.place),
  unique('notices', 'notice', (line) => line.id),
  unique('aircraftTypes', 'type', (line) => line.id),
  unique('stripLimits', 'the strip limit of', (line) => `type ${line.type} at ${line.place}`),
  unique('aircraft', 'tail', (line) => line.tail),
  unique('helicopters', 'helicopter', (line) => line.id),
  unique('pilots', 'pilot', (line) => line.id),
  unique('batches', 'batch', (line) => line.id),
  unique('drums', 'drum', (line) => line.number),
  unique('caches', 'cache', (line) => line.place),
  unique('bases', 'base', (line) => line.place),
  unique('programmes', 'programme', (line) => line.code),
  unique('bookedFlights', 'booked flight', (line) => line.id),
  unique('tieDown', 'the tie-down of', (line) => line.type),
  unique('flights', 'flight', (line) => line.id),
  unique('handPlan', 'flight', (line) => line.id),
];
