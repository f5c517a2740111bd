import { drumsThatGo, type ForStop } from '@drumline/loading';
import type { Fallback, LoadedFlight } from '../load-read.js';

type Flight = Pick<LoadedFlight, 'stops' | 'route' | 'version'>;

/** A version with fewer drums because a strip is soft, before anybody makes it. */
export interface TakeLessWords {
  /** On the button and over its panel: "Take 4: leave 0451, 0452", "Leave out LOR: take 4 (all for GAN)". */
  readonly title: string;
  /** Where it flies then; null: to the same places. */
  readonly route: string | null;
  /** What becomes of the drums that go. */
  readonly moves: string;
}

/** Null: nothing would go, so there is no such version. */
export const takeLessWords = (flight: Flight, fallback: Fallback): TakeLessWords | null => {
  const { leave, moves, place } = fallback;
  const go: readonly ForStop[] = flight.stops.map((stop) => ({
    place: stop.place,
    drums: stop.drums.filter((drum) => !leave.includes(drum)).length,
  }));
  if (go.every(({ drums }) => drums === 0)) return null;
  const isLeftOut = !go.some((stop) => stop.place === place && stop.drums > 0);
  if (isLeftOut)
    return {
      title: `Leave out ${place}: take ${drumsThatGo(go)}`,
      route: leftOutWords(flight, place),
      moves: 'The places of the other drums are found anew where they must be.',
    };
  return {
    title: `Take ${drumsThatGo(go)}: leave ${leave.join(', ')}`,
    route: null,
    moves: moves.length === 0 ? 'No other drum moves.' : `Moves: ${moves.join(', ')}. No other drum.`,
  };
};

/** The words of the sheet beside it are of a landing that is made no more. */
const leftOutWords = ({ route, version }: Flight, place: string): string =>
  `That is by version ${version}. Version ${version + 1} does not land at ${place}: it flies ${route.filter((each) => each !== place).join('-')}. Its fuel, limits and balance are worked out anew and stand on this page then.`;
