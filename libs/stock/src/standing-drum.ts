import { type IsoDate, type Litres, litres } from '@drumline/units';
import { byPlace } from './by-place.js';
import type { Batch, Drum } from './drum.js';

/** A drum with fuel in it, as a projection sees it: how much, until when, and whether it may be used. */
export interface StandingDrum {
  readonly number: string;
  readonly litres: Litres;
  readonly sealed: boolean;
  /** Last day on which it is fit; null: filled within the plan and fit throughout. */
  readonly retestDue: IsoDate | null;
  readonly held: boolean;
}

const byNumber = new Intl.Collator('en', { numeric: true }).compare;

/** Order of loading: the earliest retest date first, then the lower drum number. */
export function byAge(a: StandingDrum, b: StandingDrum): number {
  if (a.retestDue === b.retestDue) return byNumber(a.number, b.number);
  if (a.retestDue === null) return 1;
  if (b.retestDue === null) return -1;
  return a.retestDue < b.retestDue ? -1 : 1;
}

/** Order of use: part-used drums, then as they are loaded (conventions, "Oldest fit first"). */
export function byUse(a: StandingDrum, b: StandingDrum): number {
  return Number(a.sealed) - Number(b.sealed) || byAge(a, b);
}

/** Whether a drum may be used on a day: not held, and up to and on its retest date (conventions, "Retest date"). */
export function fitOn(drum: StandingDrum, day: IsoDate): boolean {
  return !drum.held && inDate(drum, day);
}

/** Whether the retest date of a drum has not passed on a day, held or not. */
export function inDate(drum: StandingDrum, day: IsoDate): boolean {
  return drum.retestDue === null || day <= drum.retestDue;
}

/** Litres in some drums together. */
export function litresIn(drums: readonly { readonly litres: Litres }[]): Litres {
  return litres(drums.reduce((sum, drum) => sum + drum.litres, 0));
}

/** Drums with fuel by place, each place in order of use. Throws where a drum names a batch that is not listed. */
export function standingDrums(
  drums: readonly Drum[],
  batches: readonly Batch[],
): ReadonlyMap<string, readonly StandingDrum[]> {
  const batchOf = new Map(batches.map((batch) => [batch.id, batch]));
  const standing = byPlace(drums.filter(hasFuel));
  return new Map(
    [...standing].map(([place, there]) => [
      place,
      there.map((drum) => asStanding(drum, batchOf.get(drum.batch))).sort(byUse),
    ]),
  );
}

function hasFuel(drum: Drum): boolean {
  return drum.content === 'filled sealed' || drum.content === 'part used';
}

function asStanding(drum: Drum, batch: Batch | undefined): StandingDrum {
  if (!batch)
    throw new Error(`Drum ${drum.number} names batch ${drum.batch}, which is not listed: add the batch.`);
  return {
    number: drum.number,
    litres: drum.litres,
    sealed: drum.content === 'filled sealed',
    retestDue: batch.retestDue,
    held: drum.held !== undefined || batch.held !== undefined,
  };
}
