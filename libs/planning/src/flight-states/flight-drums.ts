import { drumWords, listWords } from '../wording.js';

/** A drum set aside for a stop; null: one still to be filled was planned. */
export interface DrumForStop {
  readonly drum: string | null;
  readonly place: string;
}

/** What the ledger says of one drum and one flight. */
export interface DrumOfFlight {
  readonly drum: string;
  /** Where it came off: left at a place, or home again; null: no report says so. */
  readonly off: { readonly kind: 'left at' | 'brought home'; readonly place: string } | null;
  /** The ledger has it aboard this flight now. */
  readonly aboard: boolean;
}

/**
 * Why the drums of a flight are not all accounted for, a sentence each; empty: they are. A drum is, when the ledger has
 * it anywhere but aboard and some movement of the flight names it.
 */
export function drumsMissing(
  load: readonly DrumForStop[],
  moved: readonly DrumOfFlight[],
): readonly string[] {
  const named = load.flatMap(({ drum }) => drum ?? []);
  const unheard = named.filter((drum) => !moved.some((each) => each.drum === drum));
  const others = moved.filter(({ drum }) => !named.includes(drum)).length;
  const unnamed = Math.max(0, load.length - named.length - others);
  return [
    ...moved
      .filter(({ aboard }) => aboard)
      .map(({ drum }) => `Drum ${drum} is still aboard: say where it was left, or that it came home.`),
    ...unheard.map((drum) => `Drum ${drum} is on the load and no report names it: loaded, left or home?`),
    ...(unnamed > 0
      ? [`${drumWords(unnamed)} without a number ${unnamed === 1 ? 'was' : 'were'} planned: enter which.`]
      : []),
  ];
}

export interface PlannedLanding {
  readonly place: string;
  readonly drums: number;
}

/**
 * How what was left differs from the plan, a sentence each; empty: as planned. What a stop is short of is said once the
 * flight is over.
 */
export function deliveryDifferences(
  stops: readonly PlannedLanding[],
  moved: readonly DrumOfFlight[],
  isOver: boolean,
): readonly string[] {
  const left = moved.flatMap(({ drum, off }) =>
    off?.kind === 'left at' ? [{ drum, place: off.place }] : [],
  );
  const planned = new Map<string, number>();
  for (const { place, drums } of stops) planned.set(place, (planned.get(place) ?? 0) + drums);
  const places = [...new Set([...planned.keys(), ...left.map(({ place }) => place)])];
  return places.flatMap((place) => {
    const there = left.filter((each) => each.place === place).map(({ drum }) => drum);
    const drums = planned.get(place);
    if (drums === undefined)
      return [`${drumWords(there.length)} left at ${place}, which is not on its plan: ${listWords(there)}.`];
    if (there.length === drums || (there.length < drums && !isOver)) return [];
    return [`${place}: ${drumWords(there.length)} left, ${drums} planned.`];
  });
}
