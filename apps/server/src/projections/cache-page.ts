import type { CacheAnswer, LevelsAnswer } from '@drumline/contract';
import { type CacheOutlook, lowestLevel, type suggestedMinimums } from '@drumline/planning';
import { type Cache, type CacheProjection, stockConfidence } from '@drumline/stock';
import { hours, type IsoInstant, litres } from '@drumline/units';
import type { CacheFigures, PlaceFigures } from '../stock/place-figures.js';

/** What the page of a cache is made from. */
export interface CacheFacts {
  readonly cache: Cache;
  readonly outlook: CacheOutlook;
  readonly figures: PlaceFigures & { readonly cache: CacheFigures };
  readonly suggested: ReturnType<typeof suggestedMinimums>[number];
  readonly asOf: IsoInstant;
  readonly silentPhones: number;
}

/** A cache as its page shows it: levels, stock, what lies ahead. */
export const cachePage = (facts: CacheFacts): CacheAnswer => {
  const { cache, outlook, figures, suggested } = facts;
  const { noDeliveries, approved, offered, deliveries, draws, slings } = outlook;
  const { minimum, leadTimeUse, safetyStock, reserve } = suggested;
  return {
    ...cache,
    permitUntil: cache.permitUntil ?? null,
    endTargetLitres: cache.endTargetLitres ?? null,
    suggestedMinimum: {
      litres: minimum,
      leadTimeUseLitres: leadTimeUse,
      safetyStockLitres: safetyStock,
      reserveLitres: reserve,
    },
    stock: stockNow(facts),
    daysOfCover: noDeliveries.daysOfCover,
    projections: { noDeliveries: levels(noDeliveries), approved: levels(approved), offered: levels(offered) },
    agedOut: approved.agedOut,
    deliveries,
    draws,
    slings,
    remarks: figures.remarks,
  };
};

const stockNow = ({ figures, asOf, silentPhones }: CacheFacts): CacheAnswer['stock'] => {
  const { lastCount, cache } = figures;
  const ageHours = hours(
    lastCount === null ? 0 : (Date.parse(asOf) - Date.parse(lastCount.count.at)) / 3_600_000,
  );
  return {
    bookLitres: figures.bookLitres,
    countShortfallLitres: figures.countShortfallLitres,
    heldLitres: figures.heldLitres,
    pastRetestLitres: figures.pastRetestLitres,
    usableLitres: figures.usableLitres,
    drawableLitres: cache.drawableLitres,
    level: cache.level,
    isOverCapacity: cache.isOverCapacity,
    sealedDrums: figures.sealedDrums,
    partUsedDrums: figures.partUsedDrums,
    emptyDrums: figures.emptyDrums,
    lastCount: lastCount === null ? null : { ...lastCount, ageHours },
    ...stockConfidence({
      countAgeHours: lastCount === null ? null : ageHours,
      seenFrom: lastCount?.count.seenFrom ?? 'ground',
      isDisputed: lastCount !== null && lastCount.verdict !== 'accepted',
      silentPhones,
    }),
  };
};

export const levels = (projection: CacheProjection): LevelsAnswer => {
  const { usable, book, standing, belowMinimumDay, belowCriticalDay, runOutDay } = projection;
  return {
    usableLitres: usable,
    lowest: lowestLevel(projection),
    bookLitres: book,
    standingLitres: standing,
    ...refused(projection),
    belowMinimumDay,
    belowCriticalDay,
    runOutDay,
  };
};

/** Of what a draw asks for beyond the reserve: what stands there as the medevac reserve, and what no drum holds. */
export const refused = ({
  usable,
  unmet,
}: Pick<CacheProjection, 'usable' | 'unmet'>): Pick<LevelsAnswer, 'outOfReserveLitres' | 'unmetLitres'> => {
  const outOfReserve = unmet.map((asked, day) => litres(Math.min(asked, Math.max(0, usable[day]! + asked))));
  return {
    outOfReserveLitres: outOfReserve,
    unmetLitres: unmet.map((asked, day) => litres(asked - outOfReserve[day]!)),
  };
};
