import { type IsoDate, type Litres, litres } from '@drumline/units';
import type { BaseStock, Batch, Drum } from './drum.js';
import { fitOn, litresIn, standingDrums } from './standing-drum.js';

/** What flights can take from a base, cumulated: entry d counts from the first day to the end of day d (from 0). */
export interface BaseSupply {
  readonly place: string;
  readonly filledDrums: number;
  readonly drumsByDay: readonly number[];
  /** Litres for drums and own fuel together. */
  readonly litresByDay: readonly Litres[];
}

/**
 * Drums ready and litres at a base (conventions, "Drums ready at a base", "Base stock"). A drum filled on a day flies
 * from the next; a resupply is there in the morning. Resupplies before the first day are in the bulk already.
 */
export function baseSupply(
  base: BaseStock,
  drums: readonly Drum[],
  batches: readonly Batch[],
  dates: readonly IsoDate[],
  fillLitres: Litres,
): BaseSupply {
  const filled = (standingDrums(drums, batches).get(base.place) ?? []).filter(
    (drum) => drum.sealed && fitOn(drum, dates[0]!),
  );
  const bulk = dates.map((day) => bulkUpTo(base, dates[0]!, day));
  const fresh = freshDrums(base, bulk, fillLitres);
  return {
    place: base.place,
    filledDrums: filled.length,
    drumsByDay: fresh.map((ready) => filled.length + ready),
    litresByDay: bulk.map((amount) => litres(litresIn(filled) + amount)),
  };
}

function bulkUpTo({ bulkLitres, resupplies }: BaseStock, firstDay: IsoDate, day: IsoDate): Litres {
  const come = resupplies.filter(({ date }) => firstDay <= date && date <= day);
  return litres(bulkLitres + litresIn(come));
}

/** Drums filled before each day: the rate, the empties and the bulk of the days before limit them. */
function freshDrums(base: BaseStock, bulk: readonly Litres[], fillLitres: Litres): readonly number[] {
  let ready = 0;
  return bulk.map((_, day) => {
    if (day > 0)
      ready = Math.min(
        ready + base.fillDrumsPerDay,
        base.emptiesFitForUse,
        Math.floor(bulk[day - 1]! / fillLitres),
      );
    return ready;
  });
}
