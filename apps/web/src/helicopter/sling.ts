import type { DrumToOpen } from '@drumline/stock';
import { kilograms, localDate, poundsFromKilograms, print } from '@drumline/units';
import type { CacheView } from './cache-view.js';
import { movementsOf } from './own-movements.js';
import type { PlacesHere } from './use-places.js';

/** A planned sling from a place, and how far it has come. */
export interface SlingPlan {
  readonly to: string;
  readonly drums: number;
  readonly distanceNm: number;
  readonly setDown: number;
}

/** This helicopter's next from here; null: none is planned. */
export const slingPlan = (here: PlacesHere, from: string): SlingPlan | null => {
  const { places, today } = here;
  const planned = places.slings.find((sling) => sling.from === from && sling.date >= today);
  if (planned === undefined) return null;
  const { to, drums, distanceNm } = planned;
  return { to, drums, distanceNm, setDown: setDownToday(here, from, to) };
};

const setDownToday = ({ entries, places, today }: PlacesHere, from: string, to: string): number =>
  entries
    .flatMap(movementsOf)
    .filter((movement) => movement.kind === 'slung' && movement.from === from && movement.to === to)
    .filter(({ happenedAt }) => localDate(happenedAt, places.timeZone) === today).length;

/** Sealed and fit, the oldest first: part drums do not fly under a sling. */
export const toLift = ({ fit }: CacheView): readonly DrumToOpen[] =>
  fit.filter(({ drum }) => drum.content === 'filled sealed');

/** The drums of the next lift, unless somebody chooses others. */
export const nextLift = (
  view: CacheView,
  plan: SlingPlan | null,
  drumsPerLift: number,
): readonly string[] => {
  const left = plan === null ? drumsPerLift : plan.drums - plan.setDown;
  const many = Math.max(0, Math.min(drumsPerLift, left > 0 ? left : drumsPerLift));
  return toLift(view)
    .slice(0, many)
    .map(({ drum }) => drum.number);
};

/** "538.5 kg · 1,187 lb". */
export const liftWeight = (view: CacheView, numbers: readonly string[]): string => {
  const kg = toLift(view).reduce(
    (sum, { drum }) => sum + (numbers.includes(drum.number) ? drum.grossKg : 0),
    0,
  );
  return `${print(kilograms(kg), 'kg', 1)} · ${print(poundsFromKilograms(kilograms(kg)), 'lb')}`;
};
