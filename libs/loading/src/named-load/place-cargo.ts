import { type Pounds, pounds } from '@drumline/units';
import { type CabinConfiguration, configurationOf, type LoadPlace } from '../aircraft-type.js';
import { type Cargo, placeOf } from '../cabin.js';
import type { NamedDrum, NamedLoad, StandingDrumAboard } from './named-load.js';
import { placeDrums } from './place-drums.js';

/** A passenger or a piece of freight that needs a place. */
export interface CargoToPlace {
  readonly name: string;
  readonly weightLb: Pounds;
  readonly firstLeg: number;
  readonly lastLeg: number;
  readonly kind: 'passenger' | 'freight';
  /** Freight that may be spread over several places. */
  readonly divisible: boolean;
}

export type PlacedCargo =
  | { readonly found: true; readonly cargo: readonly Cargo[]; readonly drums: readonly StandingDrumAboard[] }
  | { readonly found: false; readonly why: string };

/** Ways that are tried before it is left to a person; a cabin has few that differ. */
const mostTries = 300;

/**
 * Places for passengers and freight beside named drums, so that weights of places and balance hold: passengers in seats,
 * freight in freight places and, where those are full, in drum positions, which the drums then do without. Tries the
 * usual ways (from the front, from the back, freight places first), not every one: a person may still find another.
 */
export function placeCargo(
  load: Omit<NamedLoad, 'cargo' | 'drums'>,
  items: readonly CargoToPlace[],
  drums: readonly NamedDrum[],
): PlacedCargo {
  const configuration = configurationOf(load.request.type, load.request.configuration);
  let tries = 0;
  let why: string | null = null;
  const place = (placed: readonly Cargo[], left: readonly CargoToPlace[]): PlacedCargo | null => {
    const [item, ...others] = left;
    if (!item) {
      tries++;
      const standing = placeDrums({ ...load, drums: [], cargo: placed }, drums);
      if (standing.found) return { found: true, cargo: placed, drums: standing.drums };
      why ??= standing.why;
      return null;
    }
    const ways = waysFor(configuration, placed, item);
    if (ways.length === 0)
      why ??= `${item.name}: no ${item.kind === 'passenger' ? 'seat' : 'place'} is free for it`;
    for (const way of ways) {
      const found = tries < mostTries ? place([...placed, ...way], others) : null;
      if (found) return found;
    }
    return null;
  };
  return place([], items) ?? { found: false, why: why ?? 'no way found' };
}

/** The ways to place one item beside what has its place; each way is one or more pieces. */
function waysFor(configuration: CabinConfiguration, placed: readonly Cargo[], item: CargoToPlace): Cargo[][] {
  const { seats, freightPlaces, drumPositions } = configuration;
  const byArm = (places: readonly LoadPlace[]) => [...places].sort((a, b) => a.armIn - b.armIn);
  const room = (place: LoadPlace) => roomIn(configuration, placed, item, place);
  if (item.kind === 'passenger') {
    const free = byArm(seats).filter((seat) => isFree(placed, item, seat) && seat.limitLb >= item.weightLb);
    return [...new Set([free.at(0), free.at(-1)])].flatMap((seat) =>
      seat ? [[inPlace(item, seat.id)]] : [],
    );
  }
  const nets = byArm(freightPlaces);
  const free = byArm(drumPositions).filter((position) => isFree(placed, item, position));
  const whole = [...nets, ...free].filter((place) => room(place) >= item.weightLb);
  const spread = item.divisible
    ? [[...nets, ...free], [...nets].reverse().concat([...free].reverse())].flatMap(
        (places) => spreadOver(item, places, room) ?? [],
      )
    : [];
  return [...whole.map((place) => [inPlace(item, place.id)]), ...spread];
}

const inPlace = (
  { name, firstLeg, lastLeg, weightLb }: CargoToPlace,
  place: string,
  part = weightLb,
): Cargo => ({
  name,
  weightLb: part,
  place,
  firstLeg,
  lastLeg,
});

/** The item in parts, each place filled before the next; nothing when it does not go in. */
function spreadOver(
  item: CargoToPlace,
  places: readonly LoadPlace[],
  room: (place: LoadPlace) => number,
): Cargo[][] | null {
  let left: number = item.weightLb;
  const parts: Cargo[] = [];
  for (const place of places) {
    const here = Math.min(left, room(place));
    if (here <= 0) continue;
    parts.push(inPlace(item, place.id, pounds(here)));
    left -= here;
  }
  return left > 0 ? null : [parts];
}

const overlaps = (a: Pick<Cargo, 'firstLeg' | 'lastLeg'>, b: Pick<Cargo, 'firstLeg' | 'lastLeg'>): boolean =>
  a.firstLeg <= b.lastLeg && b.firstLeg <= a.lastLeg;

const isFree = (placed: readonly Cargo[], item: CargoToPlace, { id }: LoadPlace): boolean =>
  !placed.some((one) => one.place === id && overlaps(one, item));

/** What a place still holds; loads that share any leg with the item count together, which is on the safe side. */
function roomIn(
  configuration: CabinConfiguration,
  placed: readonly Cargo[],
  item: CargoToPlace,
  place: LoadPlace,
): number {
  const there = placed.filter((one) => placeOf(configuration, one.place) === place && overlaps(one, item));
  const most = there.reduce((sum, { weightLb }) => sum + weightLb, 0);
  return place.limitLb - most;
}
