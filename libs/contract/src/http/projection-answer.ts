import type { CacheOutlook, PlannedForProgramme, SlingMove, SlingRemedy } from '@drumline/planning';
import type { AgedOutDrum, Cache, JudgedConfidence, JudgedCount } from '@drumline/stock';
import type { Cents, IsoDate, IsoInstant, Litres } from '@drumline/units';

/** Answer of GET /api/projections: every cache and where its stock leads. */
export interface ProjectionsAnswer extends ProjectionFrame {
  readonly items: readonly CacheAnswer[];
  readonly slingRemedies: readonly SlingRemedyAnswer[];
  readonly next: null;
}

/** A cache that falls short before a sling that feeds it, and the day on which it would come in time. */
export interface SlingRemedyAnswer extends SlingRemedy {
  /** The line of the programme as it is kept, whole; null: it is not kept like that yet. */
  readonly kept: { readonly id: string; readonly version: number; readonly data: SlingMove } | null;
}

/** Answer of GET /api/projections/:place. */
export type ProjectionAnswer = ProjectionFrame & CacheAnswer;

interface ProjectionFrame {
  readonly asOf: IsoInstant;
  readonly firstDay: IsoDate;
  /** Day 1 and on: figures by day have one entry more, index 0 is now. */
  readonly dates: readonly IsoDate[];
  readonly fillLitres: Litres;
  readonly serviceLevelPercent: number;
  /** People of the field whose phones may hold reports. */
  readonly notHeardFrom: readonly {
    readonly person: string;
    readonly device: string;
    readonly lastSeenAt: Date;
  }[];
}

/** A cache as its page shows it: levels, stock, what lies ahead. */
export interface CacheAnswer extends Omit<Cache, 'endTargetLitres' | 'permitUntil'> {
  readonly endTargetLitres: Litres | null;
  readonly permitUntil: IsoDate | null;
  readonly suggestedMinimum: {
    readonly litres: Litres;
    readonly leadTimeUseLitres: Litres;
    readonly safetyStockLitres: Litres;
    readonly reserveLitres: Litres;
  };
  readonly stock: CacheStockAnswer;
  /** Usable over the mean draw of the days ahead; null: nothing is drawn. */
  readonly daysOfCover: number | null;
  readonly projections: {
    readonly noDeliveries: LevelsAnswer;
    readonly approved: LevelsAnswer;
    readonly offered: LevelsAnswer;
  };
  /** Fit today, and past retest before the plan would burn them. */
  readonly agedOut: readonly AgedOutDrum[];
  readonly deliveries: CacheOutlook['deliveries'];
  readonly draws: CacheOutlook['draws'];
  readonly slings: CacheOutlook['slings'];
  readonly remarks: readonly string[];
}

interface CacheStockAnswer extends JudgedConfidence {
  readonly bookLitres: Litres;
  readonly countShortfallLitres: Litres;
  readonly heldLitres: Litres;
  readonly pastRetestLitres: Litres;
  readonly usableLitres: Litres;
  readonly drawableLitres: Litres;
  readonly level: 'enough' | 'below minimum' | 'below critical';
  readonly isOverCapacity: boolean;
  readonly sealedDrums: number;
  readonly partUsedDrums: number;
  readonly emptyDrums: number;
  /** `countedLitres`: as it was written down; `count.litres`: carried forward by what has moved since. */
  readonly lastCount: (JudgedCount & { readonly countedLitres: Litres }) | null;
}

/** Figures by day, index 0 is now, index d the end of day d; the days of a shortfall are such indices. */
export interface LevelsAnswer {
  readonly usableLitres: readonly Litres[];
  readonly bookLitres: readonly Litres[];
  /** After the day's landings, before anything leaves. */
  readonly standingLitres: readonly Litres[];
  readonly unmetLitres: readonly Litres[];
  readonly belowMinimumDay: number | null;
  readonly belowCriticalDay: number | null;
  readonly runOutDay: number | null;
}

/** Answer of POST /api/projections/consequence: the caches that one change of the territory touches. */
export interface ProjectionChangeAnswer {
  readonly firstDay: IsoDate;
  readonly dates: readonly IsoDate[];
  readonly items: readonly {
    readonly place: string;
    readonly before: CacheCourse;
    readonly after: CacheCourse;
  }[];
  /** Helicopter hours and litres of the programmes that it changes. */
  readonly programmes: readonly {
    readonly before: ForeseenForProgramme;
    readonly after: ForeseenForProgramme;
  }[];
  /** After the change, of the caches that it touches. */
  readonly slingRemedies: readonly SlingRemedyAnswer[];
}

export interface ForeseenForProgramme extends PlannedForProgramme {
  /** At what the flights ahead deliver for; null: nothing is flown to one of its places, and its rule asks for that. */
  readonly recharge: Cents | null;
}

/** Where a cache leads with all its flights, approved and offered, and the levels that it is held against. */
export interface CacheCourse
  extends Pick<Cache, 'minimumLitres' | 'criticalLitres' | 'medevacReserveLitres' | 'capacityDrums'> {
  readonly levels: LevelsAnswer;
}
