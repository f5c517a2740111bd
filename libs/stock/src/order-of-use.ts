import type { IsoDate } from '@drumline/units';
import type { Batch, Drum, Hold } from './drum.js';
import { byUse, fitOn, inDate, type StandingDrum, standingDrums } from './standing-drum.js';

/** A drum with fuel, as whoever is to open it reads it. */
export interface DrumToOpen {
  readonly drum: Drum;
  readonly batch: Batch;
  readonly fitness: 'fit' | 'past retest' | 'held';
  /** Its own hold, or its batch's; null: not held. */
  readonly hold: Hold | null;
}

const rank: Readonly<Record<DrumToOpen['fitness'], number>> = { fit: 0, 'past retest': 1, held: 2 };

/**
 * The drums with fuel at a place in the order in which to open them on a day (conventions, "Oldest fit first"): part used
 * first, then the earliest retest date; after them what is past its retest date, and last what is held, neither of which
 * may be opened. Throws where a drum names a batch that is not listed.
 */
export function orderOfUse(
  place: string,
  { drums, batches }: { readonly drums: readonly Drum[]; readonly batches: readonly Batch[] },
  day: IsoDate,
): readonly DrumToOpen[] {
  const standing = standingDrums(drums, batches).get(place) ?? [];
  const byNumber = new Map(drums.map((drum) => [drum.number, drum]));
  const byId = new Map(batches.map((batch) => [batch.id, batch]));
  return standing
    .map((each) => ({ each, fitness: fitnessOn(each, day) }))
    .sort((a, b) => rank[a.fitness] - rank[b.fitness] || byUse(a.each, b.each))
    .map(({ each, fitness }) => {
      const drum = byNumber.get(each.number)!;
      const batch = byId.get(drum.batch)!;
      return { drum, batch, fitness, hold: drum.held ?? batch.held ?? null };
    });
}

/**
 * Of drums that were opened at a place on a day, those before which another fit one was to be opened that was not: each
 * with the first of these. `there`: all drums with fuel at the place, in any order; a number that is not among them is left out.
 */
export function openedOutOfOrder(
  opened: readonly string[],
  there: readonly StandingDrum[],
  day: IsoDate,
): readonly { readonly number: string; readonly first: string }[] {
  const [first] = there.filter((drum) => fitOn(drum, day) && !opened.includes(drum.number)).toSorted(byUse);
  if (first === undefined) return [];
  return there
    .filter((drum) => opened.includes(drum.number) && byUse(first, drum) < 0)
    .map(({ number }) => ({ number, first: first.number }));
}

const fitnessOn = (drum: StandingDrum, day: IsoDate): DrumToOpen['fitness'] => {
  if (drum.held) return 'held';
  return inDate(drum, day) ? 'fit' : 'past retest';
};
