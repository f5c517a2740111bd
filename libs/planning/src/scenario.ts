import type {
  AircraftType,
  AuthorityApproval,
  FuelPolicy,
  ParticularsSet,
  PassengerRule,
  PlanningDrum,
  StripLimit,
  TieDownSetting,
} from '@drumline/loading';
import type {
  GivenDistance,
  HazardNotice,
  Place,
  PlannedWind,
  StripClass,
  SurfaceReport,
} from '@drumline/network';
import type {
  BaseStock,
  Batch,
  Cache,
  Count,
  CountTolerance,
  DensityTolerance,
  DipTable,
  Draw,
  Drum,
} from '@drumline/stock';
import type {
  Cents,
  CentsPerLitre,
  ClockTime,
  Hours,
  IsoDate,
  IsoInstant,
  Kilograms,
  KilogramsPerLitre,
  Knots,
  Litres,
  Minutes,
  NauticalMiles,
  Pounds,
} from '@drumline/units';

/** Everything a plan is made from: the operator's territory, stock, fleet, crews and programme at one moment. */
export interface Scenario {
  readonly format: 'drumline-scenario/1';
  readonly title: string;
  readonly note?: string;
  /** IANA name; days and clock times are local to it. */
  readonly timeZone: string;
  /** The moment the picture is of: reports and counts written later are not known yet. */
  readonly asOf: IsoInstant;
  readonly firstDay: IsoDate;
  /** Days looked ahead; the first `offeredDays` of them are offered to the dispatcher. */
  readonly days: number;
  readonly offeredDays: number;
  readonly currency: string;
  readonly policy: Policy;

  readonly places: readonly Place[];
  readonly distances: readonly GivenDistance[];
  readonly winds: readonly PlannedWind[];
  readonly surfaceReports: readonly SurfaceReport[];
  readonly notices: readonly HazardNotice[];
  readonly noFlyingDays: readonly IsoDate[];
  readonly weather: readonly WeatherOdds[];

  readonly aircraftTypes: readonly AircraftType[];
  readonly stripLimits: readonly StripLimit[];
  readonly aircraft: readonly Aircraft[];
  readonly helicopters: readonly Helicopter[];
  readonly pilots: readonly Pilot[];

  readonly batches: readonly Batch[];
  readonly drums: readonly Drum[];
  readonly caches: readonly Cache[];
  readonly bases: readonly BaseStock[];
  readonly counts: readonly Count[];

  readonly programmes: readonly Programme[];
  readonly helicopterTasks: readonly HelicopterTask[];
  readonly slings: readonly SlingMove[];
  readonly plannedUplifts: readonly PlannedUplift[];
  readonly bookedFlights: readonly BookedFlight[];
  /** Of the authority, on file: by one of them alone passengers and drums may share a leg. */
  readonly approvals?: readonly KeptApproval[];
  /** How loads are tied, by type; a type without a line, and without one for every type, has no straps counted. */
  readonly tieDown?: readonly TieDownSetting[];
  /** What the pilot is told of the dangerous goods aboard; absent: a usual set, and that it is not the operator's. */
  readonly dangerousGoods?: ParticularsSet;
  /** Flights that already stand: flown and approved ones are facts, offered ones may move at a price. */
  readonly flights: readonly StandingFlight[];
  /** The plan made by hand for the same days, to compare with and to take end targets from; empty: none. */
  readonly handPlan: readonly StandingFlight[];
}

/** The operator's rules, each a setting with a document reference. */
export interface Policy {
  readonly drum: PlanningDrum & {
    readonly fillLitres: Litres;
    readonly brimLitres: Litres;
    readonly handlingCost: Cents;
  };
  readonly bookDensityKgPerLitre: KilogramsPerLitre;
  readonly fuel: FuelPolicy;
  readonly passengers: PassengerRule;
  readonly crew: CrewRules;
  readonly flyingDay: FlyingDay;
  readonly countTolerance: CountTolerance;
  /** By how much the two totals of a loaded flight may differ; absent: none can be marked loaded. */
  readonly twoTotals?: { readonly toleranceLb: Pounds; readonly reference: string };
  /** Litres by the centimetres of a stick, the usual one first; absent: dips are written in litres. */
  readonly dipTables?: readonly DipTable[];
  /** When a drum weighed and measured is suspect; absent: only where it is no jet fuel. */
  readonly densityTolerance?: DensityTolerance;
  /** How long after its expected time a flight is overdue; absent: none is called so. */
  readonly overdue?: { readonly afterMinutes: Minutes; readonly reference: string };
  /** A price per standing flight that a re-plan removes, moves or changes. */
  readonly changePrice: Cents;
  /** Worth of a litre missing from the end target; absent: the dearest delivered cost in the territory. */
  readonly replacementCostPerLitre?: CentsPerLitre;
}

export interface CrewRules {
  readonly reference: string;
  readonly flightHoursPerDay: Hours;
  readonly dutyHoursPerDay: Hours;
  readonly flightHoursPer7Days: Hours;
  /** For classes listed here the last landing must be at that very strip and no older than this. */
  readonly recencyDays: readonly { readonly stripClass: StripClass; readonly days: number }[];
}

/** Times that the day's flights must keep to. */
export interface FlyingDay {
  readonly firstDeparture: ClockTime;
  /** Last landing is no later than this, nor than sunset less the margin. */
  readonly lastLanding: ClockTime;
  readonly daylightMarginMinutes: Minutes;
}

/** Chance that a flight to the strip is cancelled by weather. */
export interface WeatherOdds {
  readonly place: string;
  readonly morningCancel: number;
  readonly afternoonCancel: number;
}

export interface Aircraft {
  readonly tail: string;
  readonly type: string;
  readonly home: string;
  readonly absences: readonly { readonly from: IsoDate; readonly until: IsoDate; readonly reason: string }[];
}

export interface Helicopter {
  readonly id: string;
  readonly name: string;
  readonly fuelLitresPerHour: number;
  readonly drumsPerLift: number;
  /** By the operator's manual; absent: nothing is said of the hours that a sling takes. */
  readonly slinging?: {
    readonly speedKt: Knots;
    /** Hooking on, rigging and setting down. */
    readonly minutesPerLift: Minutes;
    readonly reference: string;
  };
  /** Of the machine or its crew; absent: none. */
  readonly absences?: readonly { readonly from: IsoDate; readonly until: IsoDate; readonly reason: string }[];
}

export interface Pilot {
  readonly id: string;
  readonly types: readonly string[];
  readonly stripClasses: readonly StripClass[];
  readonly lastLandings: readonly { readonly place: string; readonly date: IsoDate }[];
  readonly daysOff: readonly IsoDate[];
  /** Block hours flown before the first day, for the rolling limit. */
  readonly flown: readonly { readonly date: IsoDate; readonly blockHours: Hours }[];
  readonly note?: string;
}

export interface Programme {
  readonly code: string;
  readonly name: string;
  readonly recharge:
    | { readonly kind: 'delivered cost'; readonly marginPercent: number }
    | { readonly kind: 'fixed price'; readonly centsPerLitre: number }
    | { readonly kind: 'not recharged' };
}

export interface HelicopterTask {
  readonly date: IsoDate;
  readonly helicopter: string;
  readonly programme: string;
  readonly place: string;
  readonly hours: Hours;
  readonly litres: Litres;
  readonly note?: string;
}

/** Drums carried under a helicopter from a strip to a pad: a fact that a person may move. */
export interface SlingMove {
  readonly date: IsoDate;
  readonly helicopter: string;
  readonly from: string;
  readonly to: string;
  readonly drums: number;
  readonly distanceNm: NauticalMiles;
}

/** Fuel an aeroplane is planned to take from a cache, on a flight outside this plan. */
export type PlannedUplift = Draw;

/** An approval of the authority as it is kept. */
export interface KeptApproval extends Omit<AuthorityApproval, 'enteredBy' | 'confirmedBy'> {
  /** The two people who put their names to it; absent: it waits for them, and covers nothing. */
  readonly agreedBy?: readonly string[];
}

/** A flight that flies anyway: its aircraft is held, and its spare payload may take drums. */
export interface BookedFlight {
  readonly id: string;
  readonly date: IsoDate;
  readonly aircraft: string;
  readonly configuration: string;
  readonly purpose: string;
  readonly legs: readonly BookedLeg[];
  /** Number of the approval that is cited for drums beside its passengers. */
  readonly approval?: string;
  /** Aircraft time taken out of that day, turn-rounds included. */
  readonly heldHours: Hours;
  readonly departs?: ClockTime;
  readonly note?: string;
}

export interface BookedLeg {
  readonly from: string;
  readonly to: string;
  readonly passengers: number;
  readonly passengersKg: Kilograms;
  readonly freightKg: Kilograms;
}

/** State of a flight that a plan counts with. */
export type StandingState =
  | 'offered'
  | 'approved'
  | 'given'
  | 'loaded'
  | 'away'
  | 'home'
  | 'reported'
  | 'closed';

/** State of any flight; how it goes from one to the next stands in docs/flight-states.md. */
export type FlightState =
  | StandingState
  | 'idea'
  | 'declined'
  | 'called off'
  | 'turned back'
  | 'ended elsewhere';

/** Drums for one stop of a flight. */
export interface StandingStop {
  readonly place: string;
  readonly drums: number;
  /** Of them, on hold: they would stand there, and nobody may draw from them; absent: none. */
  readonly heldDrums?: number;
}

export interface StandingFlight {
  readonly id: string;
  readonly state: StandingState;
  readonly date: IsoDate;
  readonly aircraft: string;
  readonly from: string;
  readonly stops: readonly StandingStop[];
  readonly to: string;
  readonly pilot?: string;
  readonly departs?: ClockTime;
}
