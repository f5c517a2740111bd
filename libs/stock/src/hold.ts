import type { IsoDate, Litres } from '@drumline/units';
import { byPlace } from './by-place.js';
import type { Batch, Cache, Drum, Hold } from './drum.js';
import { openingStock, type StockPicture } from './opening-stock.js';
import { litresIn } from './standing-drum.js';

/** What is to be held: a whole batch, or drums by number. */
export type HoldSubject = { readonly batch: string } | { readonly drums: readonly string[] };

/** What a hold takes out of use, place by place, and which caches are short with it. */
export interface HoldConsequence {
  /** The stock with the hold set. */
  readonly picture: StockPicture;
  /** Drums with fuel that the hold names. */
  readonly drums: number;
  readonly litres: Litres;
  readonly places: readonly HeldPlace[];
  /** Places named by the hold whose usable stock is below the level with it, whether or not it was before. */
  readonly belowMinimum: readonly string[];
  readonly belowCritical: readonly string[];
}

export interface HeldPlace {
  readonly place: string;
  readonly drums: readonly Drum[];
  readonly usableLitresBefore: Litres;
  readonly usableLitresAfter: Litres;
}

/** Sets a hold; the book does not change. A drum or batch that is held already keeps its first hold. */
export function withHold(picture: StockPicture, subject: HoldSubject, hold: Hold): StockPicture {
  const held = <Row extends { readonly held?: Hold }>(row: Row): Row =>
    row.held ? row : { ...row, held: hold };
  return 'batch' in subject
    ? {
        ...picture,
        batches: picture.batches.map((batch) => (batch.id === subject.batch ? held(batch) : batch)),
      }
    : {
        ...picture,
        drums: picture.drums.map((drum) => (subject.drums.includes(drum.number) ? held(drum) : drum)),
      };
}

/** Takes one hold back wherever it stands: the stock as it was before that hold was set. */
export function withoutHold(picture: StockPicture, hold: Hold): StockPicture {
  const lifted = <Row extends { readonly held?: Hold }>(row: Row): Row => {
    const { held, ...rest } = row;
    return held && isSameHold(held, hold) ? (rest as Row) : row;
  };
  return { ...picture, batches: picture.batches.map(lifted), drums: picture.drums.map(lifted) };
}

const isSameHold = (one: Hold, other: Hold): boolean =>
  one.reason === other.reason && one.by === other.by && one.at === other.at;

/** The hold on a drum, of its batch or of itself, and what is held: "Batch J27-041". Undefined: neither is held. */
export function holdOn(
  { number, batch: id, held }: Pick<Drum, 'number' | 'batch' | 'held'>,
  batches: readonly Pick<Batch, 'id' | 'held'>[],
): { readonly what: string; readonly hold: Hold } | undefined {
  const ofBatch = batches.find((batch) => batch.id === id)?.held;
  if (ofBatch !== undefined) return { what: `Batch ${id}`, hold: ofBatch };
  return held === undefined ? undefined : { what: `Drum ${number}`, hold: held };
}

/** What follows from a hold, with usable stock read on `day`. Places in the order in which their drums are listed. */
export function consequenceOfHold(
  picture: StockPicture,
  caches: readonly Cache[],
  subject: HoldSubject,
  hold: Hold,
  day: IsoDate,
): HoldConsequence {
  const named = picture.drums.filter((drum) => drum.litres > 0 && isNamed(drum, subject));
  const drumsAt = byPlace(named);
  const after = withHold(picture, subject, hold);
  const stockBefore = openingStock([...drumsAt.keys()], picture, day);
  const stockAfter = openingStock([...drumsAt.keys()], after, day);
  const below = (level: (cache: Cache) => Litres) =>
    caches
      .filter(
        (cache) => (stockAfter.get(cache.place)?.usableLitres ?? Number.POSITIVE_INFINITY) < level(cache),
      )
      .map((cache) => cache.place);
  return {
    picture: after,
    drums: named.length,
    litres: litresIn(named),
    places: [...drumsAt].map(([place, drums]) => ({
      place,
      drums,
      usableLitresBefore: stockBefore.get(place)!.usableLitres,
      usableLitresAfter: stockAfter.get(place)!.usableLitres,
    })),
    belowMinimum: below((cache) => cache.minimumLitres),
    belowCritical: below((cache) => cache.criticalLitres),
  };
}

function isNamed(drum: Drum, subject: HoldSubject): boolean {
  return 'batch' in subject ? drum.batch === subject.batch : subject.drums.includes(drum.number);
}
