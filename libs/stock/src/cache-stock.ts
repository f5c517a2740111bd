import { type IsoDate, type Litres, litres } from '@drumline/units';
import { byAge, byUse, fitOn, litresIn, type StandingDrum } from './standing-drum.js';

/** Drums taken from a place, and what stays. Both lists stay in order of use. */
export interface Taken {
  readonly left: readonly StandingDrum[];
  readonly taken: readonly StandingDrum[];
}

/** Litres that may be used on a day. */
export function fitLitres(drums: readonly StandingDrum[], day: IsoDate): Litres {
  return litresIn(drums.filter((drum) => fitOn(drum, day)));
}

/** Drums put down at a place. */
export function setDown(
  drums: readonly StandingDrum[],
  more: readonly StandingDrum[],
): readonly StandingDrum[] {
  return more.length === 0 ? drums : [...drums, ...more].sort(byUse);
}

/** The most that may be taken: whole drums, and the litres in them. */
export interface Most {
  readonly drums: number;
  readonly litres: number;
}

/** Takes sealed drums that are fit on the day, oldest fit first (conventions, "Oldest fit first"), while there is room. */
export function takeSealed(drums: readonly StandingDrum[], most: Most, day: IsoDate): Taken {
  const taken = new Set<StandingDrum>();
  let room = most.litres;
  for (const drum of drums.filter((each) => each.sealed && fitOn(each, day)).sort(byAge)) {
    room -= drum.litres;
    if (taken.size === most.drums || room < 0) break;
    taken.add(drum);
  }
  return { left: drums.filter((drum) => !taken.has(drum)), taken: [...taken] };
}

/** Draws up to `wanted` litres from what is fit on the day, in order of use; emptied drums are gone, one may stay part used. */
export function drawDown(drums: readonly StandingDrum[], wanted: number, day: IsoDate): Taken {
  const left: StandingDrum[] = [];
  const taken: StandingDrum[] = [];
  let open = wanted;
  for (const drum of drums) {
    const used = fitOn(drum, day) ? Math.min(open, drum.litres) : 0;
    if (used > 0) taken.push({ ...drum, litres: litres(used) });
    if (used === 0) left.push(drum);
    else if (used < drum.litres) left.push({ ...drum, litres: litres(drum.litres - used), sealed: false });
    open -= used;
  }
  return { left: left.sort(byUse), taken };
}

/**
 * Takes litres that a count did not find out of the drums that would be used last: nobody knows which are missing,
 * and the newest are the ones a plan counts on longest.
 */
export function withoutMissing(
  drums: readonly StandingDrum[],
  missing: Litres,
  day: IsoDate,
): readonly StandingDrum[] {
  return drawDown([...drums].reverse(), missing, day).left;
}
