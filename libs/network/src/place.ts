import type { ClockTime, Feet, Hours, IsoDate, IsoInstant, Knots, NauticalMiles } from '@drumline/units';

/** Surface words of the trade; damp uses the dry figures, unknown is the absence of a fresh report. */
export type SurfaceState = 'dry' | 'damp' | 'soft' | 'closed';

export type PlaceKind = 'base' | 'strip' | 'pad';

/** The operator's own grade of a strip, for difficulty and crew. */
export type StripClass = 1 | 2 | 3 | 4;

export interface Position {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

export interface Place extends Position {
  readonly code: string;
  readonly name: string;
  readonly kind: PlaceKind;
  readonly elevationFt: Feet;
  /** Null at a pad. */
  readonly stripClass: StripClass | null;
  readonly runway: Runway | null;
  /** Drums that can be unloaded there in a day with the hands present; null: no limit. */
  readonly landingCapacityDrumsPerDay: number | null;
  readonly surface: SurfacePolicy;
  /** Who helps with drums there, and when; free text. */
  readonly helper?: string;
  /** Local time of the daily radio call. */
  readonly radioTime?: ClockTime;
  readonly remarks?: string;
}

/** As much of a place as lines and circles need. */
export type LocatedPlace = Position & Pick<Place, 'code'>;

export interface Runway {
  readonly lengthFt: Feet;
  readonly slopePercent: number;
  readonly material: string;
  readonly oneWay: boolean;
  /** True bearing of the side from which a one-way strip is approached: 180 is from the south. Absent: not said. */
  readonly approachFromDeg?: number;
  readonly tailwindLimitKt: Knots;
  /** Point on the approach after which landing must be completed; null where there is none. */
  readonly committalPoint: string | null;
}

/** How long a surface report stays fresh, and what the planner expects without one. */
export interface SurfacePolicy {
  readonly staleAfterHours: Hours;
  readonly expected: SurfaceState;
}

export interface SurfaceReport {
  readonly place: string;
  readonly state: SurfaceState;
  readonly at: IsoInstant;
  readonly by: string;
  /** The state is expected to hold to the end of this day (a forecast by the person who reports); absent: while fresh. */
  readonly untilDate?: IsoDate;
}

/** A hazard notice: the named places, or every leg and place within the circle, are not used while it holds. */
export interface HazardNotice {
  readonly id: string;
  readonly places: readonly string[];
  readonly circle?: Position & { readonly radiusNm: NauticalMiles };
  readonly from: IsoInstant;
  readonly until: IsoInstant;
  readonly source: string;
  readonly text: string;
}

/** A distance the operator has measured or published; it wins over the computed geodesic. Valid both ways. */
export interface GivenDistance {
  readonly between: readonly [string, string];
  readonly distanceNm: NauticalMiles;
}

/** Planned wind component on a leg; plus is tailwind. Without dates it holds every day. */
export interface PlannedWind {
  readonly from: string;
  readonly to: string;
  readonly dates?: readonly IsoDate[];
  readonly componentKt: Knots;
}
