import type { SurfaceState } from '@drumline/network';
import type { ClockTime, IsoDate, Kilograms, Knots, NauticalMiles, Pounds } from '@drumline/units';

/** What the code square of a sheet holds: enough to load, fly and check the flight with no network. Texts in capitals. */
export interface Square {
  readonly flight: string;
  readonly version: number;
  readonly aircraft: string;
  readonly type: string;
  readonly date: IsoDate;
  readonly departs: ClockTime;
  readonly legs: readonly SquareLeg[];
  readonly drums: readonly SquareDrum[];
  readonly cargo: readonly SquareCargo[];
  readonly ifSoft: readonly SquareSoft[];
}

export interface SquareLeg {
  readonly from: string;
  readonly to: string;
  readonly distanceNm: NauticalMiles;
  /** At `to`. */
  readonly surface: SurfaceState;
  readonly loadLb: Pounds;
  readonly zeroFuelLb: Pounds;
  readonly takeoffLb: Pounds;
  readonly landingLb: Pounds;
  /** The nearest limit of this leg in words, and what is spare under it. */
  readonly nearest: string;
  readonly spareLb: Pounds;
  /** Take-off limit at `to`; null: the last leg, or no take-off there. */
  readonly leaveLimitLb: Pounds | null;
  readonly tailwindLimitKt: Knots | null;
  readonly latestLeave: ClockTime | null;
  readonly committalPoint: string | null;
}

export interface SquareDrum {
  readonly number: string;
  readonly position: string;
  readonly batch: string;
  /** To a tenth. */
  readonly grossKg: Kilograms;
  readonly lb: Pounds;
  /** Leg at whose end it comes out, 0 is the first. */
  readonly offAfterLeg: number;
}

export interface SquareCargo {
  readonly name: string;
  readonly place: string;
  readonly lb: Pounds;
  readonly firstLeg: number;
  readonly lastLeg: number;
}

export interface SquareSoft {
  readonly leg: number;
  /** Null: do not go. */
  readonly take: number | null;
  readonly leave: readonly string[];
}
