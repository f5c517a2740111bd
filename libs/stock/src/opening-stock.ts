import {
  type Hours,
  hours,
  type IsoDate,
  type IsoInstant,
  type Litres,
  litres,
  print,
} from '@drumline/units';
import { byPlace } from './by-place.js';
import type { Batch, Count, CountTolerance, Drum } from './drum.js';
import { inDate, litresIn, type StandingDrum, standingDrums } from './standing-drum.js';

/** What is known of the drums at one moment. */
export interface StockPicture {
  /** Counts made later are not known yet. */
  readonly asOf: IsoInstant;
  readonly drums: readonly Drum[];
  readonly batches: readonly Batch[];
  readonly counts: readonly Count[];
  readonly countTolerance: CountTolerance;
}

/** Book, count and usable of one place, kept apart. Usable = book - shortfall - held - past retest, never below zero. */
export interface OpeningStock {
  readonly place: string;
  readonly bookLitres: Litres;
  /** Book less the last count where that is lower and outside the tolerance; else 0. */
  readonly countShortfallLitres: Litres;
  readonly heldLitres: Litres;
  /** Past retest and not held. */
  readonly pastRetestLitres: Litres;
  readonly usableLitres: Litres;
  readonly lastCount: JudgedCount | null;
  /** Drums with fuel that stand there, held and past-retest ones included. */
  readonly drums: readonly StandingDrum[];
  readonly partUsed: readonly StandingDrum[];
  /** Later than the picture. */
  readonly countsNotUsed: readonly Count[];
  /** Differences to look at, in plain sentences. */
  readonly remarks: readonly string[];
}

/** A count against the book: `lower` replaces the book, `higher` is a difference to look at and adds nothing. */
export interface JudgedCount {
  readonly count: Count;
  readonly ageHours: Hours;
  readonly toleranceLitres: Litres;
  readonly verdict: 'accepted' | 'lower' | 'higher';
}

/**
 * The stock of every given place, by place, as known at `asOf` (conventions, "Usable stock", "Tolerance of a count").
 * `day` is the local day on which retest dates are read. Litres.
 */
export function openingStock(
  places: readonly string[],
  picture: StockPicture,
  day: IsoDate,
): ReadonlyMap<string, OpeningStock> {
  const standing = standingDrums(picture.drums, picture.batches);
  const counts = byPlace(picture.counts);
  return new Map(
    places.map((place) => [
      place,
      stockOf(place, standing.get(place) ?? [], counts.get(place) ?? [], picture, day),
    ]),
  );
}

function stockOf(
  place: string,
  drums: readonly StandingDrum[],
  counts: readonly Count[],
  picture: StockPicture,
  day: IsoDate,
): OpeningStock {
  const book = litresIn(drums);
  const held = litresIn(drums.filter((drum) => drum.held));
  const pastRetest = litresIn(drums.filter((drum) => !drum.held && !inDate(drum, day)));
  const known = counts.filter((count) => hoursBetween(count.at, picture.asOf) >= 0);
  const lastCount = judge(latest(known), book, picture);
  const shortfall = lastCount?.verdict === 'lower' ? book - lastCount.count.litres : 0;
  return {
    place,
    bookLitres: book,
    countShortfallLitres: litres(shortfall),
    heldLitres: held,
    pastRetestLitres: pastRetest,
    usableLitres: litres(Math.max(0, book - shortfall - held - pastRetest)),
    lastCount,
    drums,
    partUsed: drums.filter((drum) => !drum.sealed),
    countsNotUsed: counts.filter((count) => hoursBetween(count.at, picture.asOf) < 0),
    remarks: lastCount ? difference(lastCount, book) : [],
  };
}

/** Difference between book and count that opens no case: the greater of the share of the book and the litres per open drum. */
export function toleranceOfCount(book: Litres, openDrums: number, tolerance: CountTolerance): Litres {
  return litres(Math.max((book * tolerance.percentOfBook) / 100, openDrums * tolerance.litresPerOpenDrum));
}

function latest(counts: readonly Count[]): Count | undefined {
  return counts.reduce<Count | undefined>(
    (last, count) => (last === undefined || hoursBetween(last.at, count.at) >= 0 ? count : last),
    undefined,
  );
}

function judge(count: Count | undefined, book: Litres, picture: StockPicture): JudgedCount | null {
  if (!count) return null;
  const tolerance = toleranceOfCount(book, count.openDrums, picture.countTolerance);
  const over = count.litres - book;
  const verdict = Math.abs(over) <= tolerance ? 'accepted' : over < 0 ? 'lower' : 'higher';
  return { count, ageHours: hoursBetween(count.at, picture.asOf), toleranceLitres: tolerance, verdict };
}

function hoursBetween(from: IsoInstant, until: IsoInstant): Hours {
  return hours((Date.parse(until) - Date.parse(from)) / 3_600_000);
}

function difference({ count, toleranceLitres, verdict }: JudgedCount, book: Litres): readonly string[] {
  const figures = `${count.place}: counted ${print(count.litres, 'L')} against a book of ${print(book, 'L')}, ${print(toleranceLitres, 'L')} allowed`;
  if (verdict === 'lower')
    return [`${figures}: the plan uses the count, as the lower of the two; find the missing litres.`];
  if (verdict === 'higher')
    return [
      `${figures}: the plan uses the book, as the lower of the two; look for a landing that was not reported.`,
    ];
  return [];
}
