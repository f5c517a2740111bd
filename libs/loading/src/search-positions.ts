import type { Inches } from '@drumline/units';
import type { LoadPlace } from './aircraft-type.js';
import { momentNoise } from './balanced-drums.js';
import { type DrumAboard, outOfTheDoor, type Standing } from './cabin.js';
import type { DropGroup, PositionProblem } from './position-problem.js';

export interface SearchRules {
  /** Drums that leave may not stand behind drums that stay. */
  readonly unloadOrder: boolean;
  /** Tipping arm in inches; null: not checked. */
  readonly tipArmIn: Inches | null;
  /** Drum id to position id of a loading whose drums should move as little as can be. */
  readonly standing: ReadonlyMap<string, string>;
}

export interface Placing {
  readonly drum: DrumAboard;
  readonly place: LoadPlace;
}

/** Handling of a standing, compared in this order: less is better. */
interface Handling {
  /** Rows left half full, counted on every leg. */
  readonly uneven: number;
  readonly moved: number;
  /** Places from the front, summed over the drums. */
  readonly depth: number;
}

interface Solution extends Handling {
  readonly placings: readonly Placing[];
}

/**
 * The standing of least handling, by exact search: fewest rows left half full (counted on every leg), then fewest drums
 * moved, then as far forward as can be; equal ones by the order of places. Null: no standing keeps the rules.
 */
export function searchPositions(problem: PositionProblem, rules: SearchRules): Solution | null {
  const { places, groups } = problem;
  const rows = rowsOf(places);
  const arms = places.map(({ armIn }) => armIn);
  const reach = { least: Math.min(...arms), most: Math.max(...arms) };
  const steps = groups.flatMap((group) => group.drums.map((drum, i) => ({ drum, group, i })));
  const unevenAhead = leastUnevenAhead(groups, rows);
  const free = rules.standing.size === 0;
  const placings: Placing[] = [];
  let best: Solution | null = null;

  const next = (moment: number, sofar: Handling): void => {
    const step = steps[placings.length];
    const atLeast = {
      uneven: sofar.uneven + (step ? unevenAhead.get(step.group)! : 0),
      moved: sofar.moved,
      depth: sofar.depth + leastDepthAhead(places, placings, steps.length - placings.length),
    };
    if (best !== null && !isBetter(atLeast, best)) return;
    if (step) for (const place of places) tryPlace(step, place, moment, sofar);
    else best = { ...sofar, placings: [...placings] };
  };

  const tryPlace = (
    { drum, group, i }: (typeof steps)[number],
    place: LoadPlace,
    moment: number,
    sofar: Handling,
  ): void => {
    if (isTaken(placings, place) || !problem.allowed(drum, place)) return;
    if (free && isTwin(problem, placings, drum, place, i > 0)) return;
    if (rules.unloadOrder && standsBehind(placings, drum, place)) return;
    const sum = moment + drum.weightLb * place.armIn;
    const rest = group.drums.slice(i + 1).reduce((lb, { weightLb }) => lb + weightLb, 0);
    if (sum + rest * reach.least > group.to || sum + rest * reach.most < group.from) return;
    placings.push({ drum, place });
    const isLast = i === group.drums.length - 1;
    if (!isLast || !tips(group, placings, rules.tipArmIn))
      next(sum, {
        uneven: sofar.uneven + (isLast ? group.legs * unevenRows(rows, placings) : 0),
        moved: sofar.moved + (isMoved(rules, drum, place) ? 1 : 0),
        depth: sofar.depth + places.indexOf(place),
      });
    placings.pop();
  };

  next(0, { uneven: 0, moved: 0, depth: 0 });
  return best;
}

const isBetter = (a: Handling, b: Handling): boolean =>
  (a.uneven - b.uneven || a.moved - b.moved || a.depth - b.depth) < 0;

const isTaken = (placings: readonly Placing[], place: LoadPlace): boolean =>
  placings.some((placing) => placing.place === place);

/** The places nearest the front that are still free, summed for so many drums. */
function leastDepthAhead(places: readonly LoadPlace[], placings: readonly Placing[], drums: number): number {
  let depth = 0;
  let left = drums;
  for (let index = 0; left > 0 && index < places.length; index++) {
    if (isTaken(placings, places[index]!)) continue;
    depth += index;
    left--;
  }
  return depth;
}

const isMoved = ({ standing }: SearchRules, drum: DrumAboard, place: LoadPlace): boolean =>
  standing.has(drum.id) && standing.get(drum.id) !== place.id;

/** Whether swapping equal drums or like places gives a standing that is tried elsewhere. */
function isTwin(
  { places, alike }: PositionProblem,
  placings: readonly Placing[],
  drum: DrumAboard,
  place: LoadPlace,
  inGroup: boolean,
): boolean {
  const before = placings.at(-1);
  const index = places.indexOf(place);
  if (inGroup && before?.drum.weightLb === drum.weightLb && index < places.indexOf(before.place)) return true;
  return places.slice(0, index).some((other) => alike(other, place) && !isTaken(placings, other));
}

const standsBehind = (placings: readonly Placing[], drum: DrumAboard, place: LoadPlace): boolean =>
  placings.some(
    (staying) => staying.drum.offAfterLeg > drum.offAfterLeg && staying.place.unloadOrder < place.unloadOrder,
  );

/** Whether the aeroplane sits on its tail at some stage of taking the group's drums out. */
function tips({ tipMoment }: DropGroup, placings: readonly Placing[], tipArmIn: Inches | null): boolean {
  if (tipMoment === null || tipArmIn === null) return false;
  const stop = placings.at(-1)!.drum.offAfterLeg;
  const masses: (Standing & { readonly leaves: boolean })[] = placings.map(({ drum, place }) => ({
    place,
    weightLb: drum.weightLb,
    leaves: drum.offAfterLeg === stop,
  }));
  const about = ({ place, weightLb }: Standing) => weightLb * (place.armIn - tipArmIn);
  let moment = masses.reduce((sum, mass) => sum + about(mass), tipMoment);
  if (moment > momentNoise) return true;
  for (const out of outOfTheDoor(
    masses.filter(({ leaves }) => leaves),
    tipArmIn,
  )) {
    moment -= about(out);
    if (moment > momentNoise) return true;
  }
  return false;
}

/** Places side by side: the same arm. */
const rowsOf = (places: readonly LoadPlace[]): LoadPlace[][] =>
  [...new Set(places.map(({ armIn }) => armIn))].map((armIn) =>
    places.filter((place) => place.armIn === armIn),
  );

const unevenRows = (rows: readonly LoadPlace[][], placings: readonly Placing[]): number =>
  rows.filter((row) => {
    const taken = row.filter((place) => isTaken(placings, place)).length;
    return taken > 0 && taken < row.length;
  }).length;

/** Rows that must stay half full on the legs of a group and of those searched after it: an odd drum in rows of two. */
function leastUnevenAhead(
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
