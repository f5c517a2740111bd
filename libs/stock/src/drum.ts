import type {
  CentsPerLitre,
  IsoDate,
  IsoInstant,
  Kilograms,
  KilogramsPerLitre,
  Litres,
} from '@drumline/units';

/** Fuel with one supplier certificate number. */
export interface Batch {
  readonly id: string;
  readonly grade: string;
  readonly filledOn: IsoDate;
  /** Not usable after this day without a laboratory pass. */
  readonly retestDue: IsoDate;
  readonly densityAt15KgPerLitre: KilogramsPerLitre;
  readonly filledAt: readonly string[];
  /** The whole batch is held. */
  readonly held?: Hold;
}

export interface Hold {
  readonly reason: string;
  readonly by: string;
  readonly at: IsoInstant;
}

/** What is in it; where it is and whether it may be used are separate facts. */
export type DrumContent = 'filled sealed' | 'part used' | 'clean empty' | 'empty with residue' | 'drained';

export interface Drum {
  readonly number: string;
  readonly batch: string;
  readonly place: string;
  readonly content: DrumContent;
  readonly litres: Litres;
  readonly openedOn?: IsoDate;
  readonly tareKg: Kilograms;
  readonly grossKg: Kilograms;
  readonly held?: Hold;
}

/** What the operator wants of a place where drums are kept. */
export interface Cache {
  readonly place: string;
  readonly minimumLitres: Litres;
  readonly criticalLitres: Litres;
  /** The bottom slice of the minimum: no routine draw goes into it. */
  readonly medevacReserveLitres: Litres;
  readonly capacityDrums: number;
  readonly empties: number;
  /** The level the plan leaves at the end of the horizon; absent: the minimum. */
  readonly endTargetLitres?: Litres;
  /** Last day on which drums may be on the site. */
  readonly permitUntil?: IsoDate;
}

/** Bulk fuel and filling at a base. */
export interface BaseStock {
  readonly place: string;
  readonly bulkLitres: Litres;
  readonly pricePerLitre: CentsPerLitre;
  /** What a litre is worth to the planner where it is scarce; absent: its price. */
  readonly scarcityPricePerLitre?: CentsPerLitre;
  readonly fillDrumsPerDay: number;
  readonly emptiesFitForUse: number;
  readonly resupplies: readonly { readonly date: IsoDate; readonly litres: Litres }[];
  readonly note?: string;
}

/** Someone looked: litres by dip or by drums seen. */
export interface Count {
  readonly place: string;
  readonly at: IsoInstant;
  readonly litres: Litres;
  readonly openDrums: number;
  readonly by: string;
  readonly seenFrom: 'ground' | 'air';
}

/** Difference between book and count accepted without a case: the greater of the two. */
export interface CountTolerance {
  readonly percentOfBook: number;
  readonly litresPerOpenDrum: Litres;
  readonly reference: string;
}

/** Fuel leaving a cache by plan: helicopter programme, planned uplift, or the sling's own fuel. */
export interface Draw {
  readonly date: IsoDate;
  readonly place: string;
  readonly litres: Litres;
  readonly for: string;
}
