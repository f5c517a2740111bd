import { type DrumOfFlight, replanFreedom } from '@drumline/planning';
import type { Flight, Load, Stop } from '../store/flight.table.js';

/** What a flight that is under way or done lands in the end, as far as anybody knows. */
export interface Flown {
  readonly fromPlace: string;
  /** Its stops, with the drums that are left there. */
  readonly stops: readonly Stop[];
  /** The drums among them that have a number, with the place where they are left. */
  readonly drums: readonly LandedDrum[];
}

export interface LandedDrum {
  readonly drum: string;
  readonly place: string;
}

/** Also one that is loaded the evening before. */
export const isUnderWay = ({ state }: Flight): boolean =>
  replanFreedom(state) === 'never' && state !== 'declined' && state !== 'called off';

/**
 * The drums of its load go where they were to go until the ledger has them off elsewhere or home again. One that turned
 * back or ended elsewhere lands no more than what it is known to have left.
 */
export const flownBy = (
  { state, fromPlace, stops }: Flight,
  loads: readonly Load[],
  moved: readonly DrumOfFlight[],
): Flown => {
  const leftAt = new Map(moved.flatMap(({ drum, off }) => (off === null ? [] : [[drum, off] as const])));
  const isCutShort = state === 'turned back' || state === 'ended elsewhere';
  const coming = isCutShort ? [] : loads.filter(({ drum }) => drum === null || !leftAt.has(drum));
  const left = [...leftAt].flatMap(([drum, { kind, place }]) =>
    kind === 'left at' ? [{ drum, place }] : [],
  );
  const known = new Set(left.map(({ drum }) => drum));
  // Drums planned without a number are some of those that were left.
  const unnamed = coming.filter(({ drum }) => drum === null);
  const extra = [...known].filter((drum) => !loads.some((load) => load.drum === drum)).length;
  const expected = [...coming.filter(({ drum }) => drum !== null), ...unnamed.slice(extra)];
  const landing = [...left, ...expected];
  const places = [...new Set(stops.map(({ place }) => place))];
  const there = landing.filter(({ place }) => places.includes(place));
  return {
    fromPlace,
    stops: stops.map(({ place }, index) => ({
      place,
      drums:
        stops.findIndex((stop) => stop.place === place) === index
          ? there.filter((each) => each.place === place).length
          : 0,
    })),
    drums: there.flatMap(({ drum, place }) => (drum === null ? [] : [{ drum, place }])),
  };
};
