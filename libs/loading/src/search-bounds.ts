import type { Inches } from '@drumline/units';
import type { LoadPlace } from './aircraft-type.js';
import { momentNoise } from './balanced-drums.js';
import { type DrumAboard, weightOf } from './cabin.js';
import type { DropGroup } from './position-problem.js';

export interface Placing {
  readonly drum: DrumAboard;
  readonly place: LoadPlace;
}

/** One drum to place. */
export interface Step {
  readonly drum: DrumAboard;
  readonly group: DropGroup;
  readonly isFirst: boolean;
  readonly isLast: boolean;
  /** Once this drum stands: what the moment may be at the end of this group and of each later one, and what is still to add. */
  readonly ahead: readonly Ahead[];
}

interface Ahead {
  readonly from: number;
  readonly to: number;
  /** Heaviest first. */
  readonly weightsLb: readonly number[];
}

/** The drums in the order they are placed, with what bounds the search after each. */
export function stepsOf(groups: readonly DropGroup[], tipArmIn: Inches | null): Step[] {
  return groups.flatMap((group, g) =>
    group.drums.map((drum, i) => ({
      drum,
      group,
      isFirst: i === 0,
      isLast: i === group.drums.length - 1,
      ahead: groups.slice(g).map(({ from, to, tipMoment }, later) => {
        const aboard = groups.slice(0, g + later + 1).flatMap(({ drums }) => drums);
        const standing = groups.slice(0, g).reduce((sum, { drums }) => sum + drums.length, i + 1);
        const weightsLb = aboard.slice(standing).map(({ weightLb }) => weightLb as number);
        const beforeTipping =
          tipArmIn === null || tipMoment === null
            ? Number.POSITIVE_INFINITY
            : weightOf(aboard) * tipArmIn - tipMoment + momentNoise;
        return { from, to: Math.min(to, beforeTipping), weightsLb: weightsLb.sort((a, b) => b - a) };
      }),
    })),
  );
}

/** The least moment that weights, heaviest first, can add where places are listed from the front; the most, from aft. */
export function extremeMoment(
  weightsLb: readonly number[],
  places: readonly LoadPlace[],
  placings: readonly Placing[],
): number {
  let moment = 0;
  let next = 0;
  for (const place of places) {
    const weightLb = weightsLb[next];
    if (weightLb === undefined) break;
    if (isTaken(placings, place)) continue;
    moment += weightLb * place.armIn;
    next++;
  }
  return moment;
}

/** The places nearest the front that are still free, summed for so many drums. */
export function leastDepthAhead(
  places: readonly LoadPlace[],
  placings: readonly Placing[],
  drums: number,
): number {
  let depth = 0;
  let left = drums;
  for (let index = 0; left > 0 && index < places.length; index++) {
    if (isTaken(placings, places[index]!)) continue;
    depth += index;
    left--;
  }
  return depth;
}

// Asked millions of times: a loop, because a closure for each question takes twice as long.
export function isTaken(placings: readonly Placing[], place: LoadPlace): boolean {
  for (const placing of placings) if (placing.place === place) return true;
  return false;
}

/** Places side by side: the same arm. */
export const rowsOf = (places: readonly LoadPlace[]): LoadPlace[][] =>
  [...new Set(places.map(({ armIn }) => armIn))].map((armIn) =>
    places.filter((place) => place.armIn === armIn),
  );

export const unevenRows = (rows: readonly LoadPlace[][], placings: readonly Placing[]): number =>
  rows.filter((row) => {
    const taken = row.filter((place) => isTaken(placings, place)).length;
    return taken > 0 && taken < row.length;
  }).length;

/** Rows that must stay half full on the legs of a group and of those searched after it: an odd drum in rows of two. */
export function leastUnevenAhead(
  groups: readonly DropGroup[],
  rows: readonly LoadPlace[][],
): Map<DropGroup, number> {
  const pairsOnly = rows.every((row) => row.length % 2 === 0);
  let drums = 0;
  const least = groups.map((group) => {
    drums += group.drums.length;
    return pairsOnly && drums % 2 === 1 ? group.legs : 0;
  });
  return new Map(groups.map((group, i) => [group, least.slice(i).reduce((sum, one) => sum + one, 0)]));
}
