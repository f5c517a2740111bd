import type { FlightSketch } from '../flights/flight-sketch.js';

type Stops = FlightSketch['flight']['stops'];

/**
 * The flight's stops with as many of its drums as the limits of its day let fly, those for the last stops left behind
 * first; a stop without a drum is left out. Null: all of them may go.
 */
export function mostThatMayGo({ flight, onDay, dropsByLeg, stopByLeg }: FlightSketch): Stops | null {
  const drops = [...dropsByLeg];
  for (const [leg, { drums }] of onDay.load.legs.entries()) {
    let over = sum(drops.slice(leg)) - (onDay.closed === null ? drums : 0);
    for (let at = drops.length - 1; at >= leg && over > 0; at--) {
      const left = Math.min(over, drops[at]!);
      drops[at]! -= left;
      over -= left;
    }
  }
  if (sum(drops) === sum(dropsByLeg)) return null;
  return flight.stops
    .map(({ place }, stop) => ({ place, drums: drops[stopByLeg.indexOf(stop)] ?? 0 }))
    .filter(({ drums }) => drums > 0);
}

const sum = (figures: readonly number[]): number => figures.reduce((total, figure) => total + figure, 0);
