import type { MyPlaces } from '@drumline/contract';
import type { DrumMove, DrumToOpen } from '@drumline/stock';
import { kilograms, poundsFromKilograms, print } from '@drumline/units';
import type { CacheView } from '../cache-view.js';
import type { PlacesNow } from '../places-now.js';

type SlingMove = MyPlaces['slings'][number];

/** A planned sling, and how far it has come. */
export interface SlingPlan extends SlingMove {
  readonly setDown: number;
}

/** This helicopter's from today on: those that are still to fly, and those of today that are done. */
export const slingPlans = ({ places, outlook, today }: PlacesNow): readonly SlingPlan[] =>
  places.slings
    .filter(({ date }) => date >= today)
    .map((sling) => ({ ...sling, setDown: sling.drums - leftOf(sling, outlook.slings) }))
    .filter(({ date, drums, setDown }) => date === today || setDown < drums);

const leftOf = ({ date, from, to }: SlingMove, left: readonly DrumMove[]): number =>
  left.find((sling) => sling.date === date && sling.from === from && sling.to === to)?.drums ?? 0;

/** The next from here that is still to fly, else one of today that is done; null: none is planned. */
export const slingPlan = (now: PlacesNow, from: string): SlingPlan | null => {
  const planned = slingPlans(now).filter((sling) => sling.from === from);
  return planned.find(({ drums, setDown }) => setDown < drums) ?? planned.at(-1) ?? null;
};

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
