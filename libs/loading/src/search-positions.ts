import type { Inches } from '@drumline/units';
import type { LoadPlace } from './aircraft-type.js';
import { momentNoise } from './balanced-drums.js';
import { type DrumAboard, outOfTheDoor, type Standing } from './cabin.js';
import type { DropGroup, PositionProblem } from './position-problem.js';
import {
  extremeMoment,
  isTaken,
  leastDepthAhead,
  leastUnevenAhead,
  type Placing,
  rowsOf,
  type Step,
  stepsOf,
  unevenRows,
} from './search-bounds.js';

export interface SearchRules {
  /** Drums that leave may not stand behind drums that stay. */
  readonly unloadOrder: boolean;
  /** Tipping arm in inches; null: not checked. */
  readonly tipArmIn: Inches | null;
  /** Drum id to position id of a loading whose drums should move as little as can be. */
  readonly standing: ReadonlyMap<string, string>;
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
  const fromFront = [...places].sort((a, b) => a.armIn - b.armIn);
  const fromAft = fromFront.toReversed();
  const steps = stepsOf(groups, rules.tipArmIn);
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
    { drum, group, isFirst, isLast, ahead }: Step,
    place: LoadPlace,
    moment: number,
    sofar: Handling,
  ): void => {
    if (isTaken(placings, place) || !problem.allowed(drum, place)) return;
    if (free && isTwin(problem, placings, drum, place, !isFirst)) return;
    if (rules.unloadOrder && standsBehind(placings, drum, place)) return;
    const sum = moment + drum.weightLb * place.armIn;
    placings.push({ drum, place });
    const reaches = ahead.every(
      ({ from, to, weightsLb }) =>
        sum + extremeMoment(weightsLb, fromFront, placings) <= to &&
        sum + extremeMoment(weightsLb, fromAft, placings) >= from,
    );
    if (reaches && !(isLast && tips(group, placings, rules.tipArmIn)))
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
