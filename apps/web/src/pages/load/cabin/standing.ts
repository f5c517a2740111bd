import type { Cabin, Load, LoadedFlight, Placed } from '../load-read.js';
import type { SheetDrum } from '../sheet-read.js';

/** Drums as they are shown to stand: as kept, or as somebody is trying. */
export const placedOf = (drums: readonly SheetDrum[]): readonly Placed[] =>
  drums.map(({ number, position }) => ({ drum: number, position }));

/** What stands in two places changes over; a drum and an empty place: it goes there. */
export const exchanged = (placed: readonly Placed[], one: string, other: string): readonly Placed[] =>
  placed.map(({ drum, position }) => ({
    drum,
    position: position === one ? other : position === other ? one : position,
  }));

export const isSame = (one: readonly Placed[], other: readonly Placed[]): boolean =>
  one.every(({ drum, position }) => other.some((each) => each.drum === drum && each.position === position));

/** "0451 to R1L, 0452 to R1R": what a person would have to carry. */
export const moveWords = (before: readonly Placed[], after: readonly Placed[]): string =>
  after
    .filter(({ drum, position }) => before.find((each) => each.drum === drum)?.position !== position)
    .map(({ drum, position }) => `${drum} to ${position}`)
    .join(', ');

/** The rows of a cabin from the nose, each with its places: right side above, middle, left side below. */
export const rowsOf = ({ positions }: Cabin): readonly (readonly Cabin['positions'][number][])[] => {
  const arms = [...new Set(positions.map(({ armIn }) => armIn))].sort((a, b) => a - b);
  return arms.map((arm) =>
    positions.filter(({ armIn }) => armIn === arm).sort((a, b) => sideOf(a.id) - sideOf(b.id)),
  );
};

/** By the last letter of its name, as types are drawn: R, C, L. */
export const sideOf = (id: string): number => ({ R: 0, C: 1, L: 2 })[id.slice(-1)] ?? 1;

/** Drums that stay when a strip is soft, in words: "leave if soft"; with the strip where the flight has several stops. */
export const leftWhenSoft = (
  { fallbacks }: Pick<Load, 'fallbacks'>,
  { stops }: Pick<LoadedFlight, 'stops'>,
): ReadonlyMap<string, string> =>
  new Map(
    fallbacks.flatMap(({ leave, place }) =>
      leave.map((drum) => [drum, stops.length > 1 ? `leave if ${place} is soft` : 'leave if soft'] as const),
    ),
  );

/** The stops with fewer drums, named one by one, as an amendment. */
export const withoutDrums = ({ stops }: Pick<LoadedFlight, 'stops'>, leave: readonly string[]) =>
  stops
    .map(({ place, drums }) => ({ place, numbers: drums.filter((drum) => !leave.includes(drum)) }))
    .filter(({ numbers }) => numbers.length > 0)
    .map(({ place, numbers }) => ({ place, drums: numbers.length, numbers }));

/** One drum in the place of another. */
export const withOther = ({ stops }: LoadedFlight, drum: string, other: string) =>
  stops.map(({ place, drums }) => ({
    place,
    drums: drums.length,
    numbers: drums.map((each) => (each === drum ? other : each)),
  }));

type Instead = Pick<NonNullable<LoadedFlight['insteadOfHeld']>, 'held' | 'fit' | 'setAside'>;

/** "Take 5 fit drums instead: 0573, 0574, 0575 …": in the place of those that are held; without numbers where too few are free. */
export const insteadWords = ({ held, fit }: Instead): string => {
  const named = fit.length < held.length ? [] : fit;
  const which = named.length === 0 ? '' : `: ${named.slice(0, 3).join(', ')}${named.length > 3 ? ' …' : ''}`;
  return `Take ${held.length} fit ${drumsWord(held.length)} instead${which}`;
};

/** Why it cannot be done, and which offered flights have the fit drums; undefined: as many fit drums stand there as are held. */
export const tooFewFit = ({ held, fit, setAside }: Instead, base: string): string | undefined => {
  if (fit.length >= held.length) return undefined;
  const free =
    fit.length === 0
      ? `no fit drum stands free at ${base}`
      : `${fit.length} fit ${drumsWord(fit.length)} ${fit.length === 1 ? 'stands' : 'stand'} free at ${base}`;
  const short = `${held.length} ${held.length === 1 ? 'drum is' : 'drums are'} on HOLD, and ${free}`;
  if (setAside.length === 0) return `${short}. Fill more, or amend the flight.`;
  const whose = setAside.map(({ flight, drums }) => `${drums} for ${flight}`).join(', ');
  return `${short}. Fit ones there are set aside for offered flights: ${whose}. Decline or amend one of them on Week, fill more, or amend this one.`;
};

const drumsWord = (count: number): string => (count === 1 ? 'drum' : 'drums');
