import { pounds, print } from '@drumline/units';
import type { CabinConfiguration } from './aircraft-type.js';
import { type Cargo, type PlacedDrum, placeOf, type Standing, weightOf } from './cabin.js';

/** What is wrong with a loading, and where. */
export interface BalanceFault {
  readonly kind: 'no place' | 'place taken' | 'floor limit' | 'envelope' | 'unload order' | 'tail tip';
  readonly leg: string;
  readonly text: string;
}

/** Cargo and drums of a leg that stand nowhere in the cabin. */
export function withoutPlace(
  configuration: CabinConfiguration,
  cargo: readonly Cargo[],
  drums: readonly PlacedDrum[],
  leg: number,
): string[] {
  const lostCargo = cargo
    .filter(({ firstLeg, lastLeg }) => firstLeg <= leg && leg <= lastLeg)
    .filter(({ place }) => placeOf(configuration, place) === undefined)
    .map(
      ({ name, weightLb }) => `${name}, ${print(weightLb, 'lb')}: no place in the cabin is given, name one`,
    );
  const lostDrums = drums
    .filter(({ offAfterLeg }) => leg <= offAfterLeg)
    .filter(({ position }) => !configuration.drumPositions.some(({ id }) => id === position))
    .map(({ id, position }) => `drum ${id}: ${configuration.name} has no drum position ${position}`);
  return [...lostCargo, ...lostDrums];
}

/** Places whose floor limit is passed, in words. */
export const overFloor = (aboard: readonly Standing[]): string[] =>
  byPlace(aboard).flatMap(({ place, here }) => {
    const weightLb = pounds(weightOf(here));
    return weightLb > place.limitLb
      ? [
          `${place.id}: ${print(weightLb, 'lb')}, limit ${print(place.limitLb, 'lb')}: ${print(pounds(Math.max(1, weightLb - place.limitLb)), 'lb')} over`,
        ]
      : [];
  });

/** Drum positions in which more than one load stands, in words. */
export const takenTwice = ({ drumPositions }: CabinConfiguration, aboard: readonly Standing[]): string[] =>
  byPlace(aboard)
    .filter(({ place, here }) => here.length > 1 && drumPositions.includes(place))
    .map(({ place, here }) => `${place.id} holds ${here.length} loads`);

const byPlace = (aboard: readonly Standing[]) =>
  [...new Set(aboard.map(({ place }) => place))].map((place) => ({
    place,
    here: aboard.filter((standing) => standing.place === place),
  }));

/** Drums that cannot come out because a load that stays stands nearer the door. */
export function blocked(
  { drumPositions }: CabinConfiguration,
  leaving: readonly Standing[],
  staying: readonly Standing[],
): string[] {
  const inTheWay = staying.filter(({ place }) => drumPositions.includes(place));
  return leaving.flatMap(({ place }) =>
    inTheWay
      .filter((other) => other.place.unloadOrder < place.unloadOrder)
      .map((other) => `${place.id} cannot come out past ${other.place.id}`),
  );
}
