import type { StandingFlight } from '../scenario.js';
import { drumWords } from '../wording.js';
import { comparedLevels, type ReasonPicture } from './compared-levels.js';
import { byCache, fallsWords } from './fall-words.js';
import { fallsOf } from './falls.js';

/** A stop of a flight, and what may still be set down there when it is soft. */
export interface SoftStop {
  readonly flight: StandingFlight;
  /** Index into the flight's stops; -1: nothing was to be set down there. */
  readonly stop: number;
  readonly place: string;
  /** Null: closed to the type when soft, or too heavy with the drums for other stops alone. */
  readonly drumsIfSoft: number | null;
}

/** What to do when a strip is soft or closed on arrival day, and what its cache then does. */
export function ifSoftWords(picture: ReasonPicture, at: SoftStop): string {
  const { flight, stop, drumsIfSoft: soft } = at;
  const drums = flight.stops[stop]?.drums ?? 0;
  const stayAway = stayAwayWords(picture, at, drums);
  if (soft === null) return `If soft or closed: ${stayAway}.`;
  return `If soft: ${softWords(picture, at, drums, soft)}. If closed: ${stayAway}.`;
}

function stayAwayWords(picture: ReasonPicture, at: SoftStop, drums: number): string {
  if (at.flight.stops.length > 1)
    return `do not land there${drums > 0 ? `; ${consequence(picture, at, 0)}` : ''}`;
  return drums > 0 ? 'do not go, as if declined' : 'do not go';
}

function softWords(picture: ReasonPicture, at: SoftStop, drums: number, soft: number): string {
  if (drums === 0) return 'may be landed at';
  if (soft === drums) return `${allWords(drums)} may go`;
  const take = `take ${soft === 0 ? 'none' : soft} of ${drums}${othersWords(at)}`;
  return `${take}; ${consequence(picture, at, soft)}`;
}

/** " for LOR, all 4 for GAN": the drums for other stops go as planned; empty: there are none. */
const othersWords = ({ flight, stop, place }: SoftStop): string => {
  const others = flight.stops.filter((each, index) => index !== stop && each.drums > 0);
  const rest = others.map(
    ({ place: other, drums }) => `${drums === 1 ? 'the 1' : `all ${drums}`} for ${other}`,
  );
  return rest.length === 0 ? '' : ` for ${[place, ...rest].join(', ')}`;
};

const allWords = (drums: number): string =>
  drums === 1 ? 'the drum' : drums === 2 ? 'both drums' : `all ${drumWords(drums)}`;

/** "JUTE then falls below minimum on Fri 15 Oct: 620 L of 800 L", "JUTE stays above minimum". */
function consequence(picture: ReasonPicture, { flight, stop, place }: SoftStop, drums: number): string {
  const stops = flight.stops.map((each, index) => (index === stop ? { ...each, drums } : each));
  const compared = comparedLevels(picture, flight, { ...flight, stops });
  const falls = compared.flatMap((cache) => fallsOf(picture.endTargets.get(cache.without.place) ?? 0, cache));
  const isFine = falls.every((fall) => fall.level === 'short of the end target' || fall.place !== place);
  const told = byCache(falls).map((each) => {
    const isOnlyLow = isFine && each[0]!.place === place;
    return `${each[0]!.place} ${isOnlyLow ? 'stays above minimum but' : 'then'} ${fallsWords(each)}`;
  });
  const isTold = falls.some((fall) => fall.place === place);
  return [...(isTold ? [] : [`${place} stays above minimum`]), ...told].join('; ');
}
