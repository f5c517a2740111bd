import { type IsoInstant, type Litres, litres, localDate } from '@drumline/units';
import type { Count, Drum } from '../drum.js';
import type { StockPicture } from '../opening-stock.js';
import { type DrumLife, lifeAfter, unheardOf } from './drum-life.js';
import { litresOf, millilitresOf } from './millilitres.js';
import type { Counted, Movement } from './movement.js';
import { byHappened, compareInstants } from './order.js';
import { subjectsOf } from './subjects.js';

type Stock = Pick<StockPicture, 'drums' | 'counts'>;

/**
 * A picture of stock with movements that it does not know yet, in the order in which they happened: what a phone
 * without a line reads from its last picture and its own reports. Each drum changes as in the ledger; the counts made
 * before are carried forward by what the book changes. A drum that the picture does not have changes nothing.
 */
export function stockAfter<Picture extends Stock>(
  picture: Picture,
  movements: readonly Movement[],
  timeZone: string,
): Picture {
  const after = [...movements]
    .sort(byHappened)
    .reduce((stock, movement) => apply(stock, movement, timeZone), {
      drums: picture.drums,
      counts: picture.counts,
    } as Stock);
  return { ...picture, ...after };
}

function apply(stock: Stock, movement: Movement, timeZone: string): Stock {
  if (movement.kind === 'counted') return { ...stock, counts: [...stock.counts, countOf(movement)] };
  const named = new Set(subjectsOf(movement, () => undefined).drums);
  const part = { isSource: true, isTarget: false };
  const drums = stock.drums.flatMap((drum) =>
    named.has(drum.number) ? drumOf(drum, lifeAfter(lifeOf(drum), movement, part), timeZone) : drum,
  );
  return { drums, counts: carried(stock.counts, stock.drums, drums, movement.happenedAt) };
}

function countOf({ place, happenedAt, by, seenFrom, openDrums, millilitres }: Counted): Count {
  return { place, at: happenedAt, litres: litresOf(millilitres), openDrums, by, seenFrom };
}

function carried(
  counts: readonly Count[],
  before: readonly Drum[],
  after: readonly Drum[],
  at: IsoInstant,
): readonly Count[] {
  return counts.map((count) => {
    if (compareInstants(count.at, at) > 0) return count;
    const change = bookAtPlace(after, count.place) - bookAtPlace(before, count.place);
    return change === 0 ? count : { ...count, litres: litres(Math.max(0, count.litres + change)) };
  });
}

const bookAtPlace = (drums: readonly Drum[], place: string): Litres =>
  litres(drums.reduce((sum, drum) => sum + (drum.place === place ? drum.litres : 0), 0));

const lifeOf = ({ number: _, place, litres: there, openedOn, held, ...drum }: Drum): DrumLife => ({
  ...unheardOf,
  ...drum,
  known: true,
  where: { kind: 'at', place },
  millilitres: millilitresOf(there),
  openedAt: openedOn ?? null,
  held: held ?? null,
});

/** Aboard or lost it stands nowhere. */
function drumOf(drum: Drum, life: DrumLife, timeZone: string): readonly Drum[] {
  if (life.where.kind !== 'at') return [];
  const { openedAt, content } = life;
  const held = life.condemned ?? life.held;
  const { openedOn: _, held: __, ...rest } = drum;
  return [
    {
      ...rest,
      place: life.where.place,
      content,
      litres: litresOf(life.millilitres),
      ...(openedAt === null
        ? {}
        : { openedOn: openedAt.length > 10 ? localDate(openedAt, timeZone) : openedAt }),
      ...(held === null ? {} : { held }),
    },
  ];
}
