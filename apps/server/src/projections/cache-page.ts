import type { CacheAnswer, LevelsAnswer } from '@drumline/contract';
import {
  type CacheOutlook,
  type DrawNotReported,
  lowestLevel,
  type suggestedMinimums,
} from '@drumline/planning';
import { type Cache, type CacheProjection, stockConfidence } from '@drumline/stock';
import { hours, type IsoInstant, litres } from '@drumline/units';
import type { CacheFigures, PlaceFigures } from '../stock/figures/place-figures.js';

/** What the page of a cache is made from. */
export interface CacheFacts {
  readonly cache: Cache;
  readonly outlook: CacheOutlook;
  readonly figures: PlaceFigures & { readonly cache: CacheFigures };
  readonly suggested: ReturnType<typeof suggestedMinimums>[number];
  readonly asOf: IsoInstant;
  readonly silentPhones: number;
  readonly notReported: readonly DrawNotReported[];
}

/** A cache as its page shows it: levels, stock, what lies ahead. */
export const cachePage = (facts: CacheFacts): CacheAnswer => {
  const { cache, outlook, figures, suggested, notReported } = facts;
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
    notReported,
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

/**
 * Of what leaves on a day, into aircraft and under slings: what comes out of the medevac reserve, and what no drum holds.
 * By the level, so that both agree with the figure beside them.
 */
export const refused = ({
  usable,
  landed,
  slungIn,
  pastRetest,
  reserveLitres,
}: Pick<CacheProjection, 'usable' | 'landed' | 'slungIn' | 'pastRetest' | 'reserveLitres'>): Pick<
  LevelsAnswer,
  'outOfReserveLitres' | 'unmetLitres'
> => {
  const had = usable.map((_, day) =>
    day === 0 ? usable[0]! : usable[day - 1]! + landed[day]! + slungIn[day]! - pastRetest[day]!,
  );
  const reserveIn = (level: number): number => Math.max(0, Math.min(level, reserveLitres));
  const short = (level: number): number => Math.max(0, -level);
  return {
    outOfReserveLitres: usable.map((level, day) =>
      litres(Math.max(0, reserveIn(had[day]!) - reserveIn(level))),
    ),
    unmetLitres: usable.map((level, day) => litres(Math.max(0, short(level) - short(had[day]!)))),
  };
};
