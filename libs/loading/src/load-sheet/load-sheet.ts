import type { SurfaceState } from '@drumline/network';
import type {
  ClockTime,
  Inches,
  IsoDate,
  Kilograms,
  KilogramsPerLitre,
  Litres,
  NauticalMiles,
  Pounds,
} from '@drumline/units';
import type { GoodsDrum } from '../dangerous-goods/goods-aboard.js';
import type { Particular, ParticularsSet } from '../dangerous-goods/particulars.js';
import type { AuthorityApproval, PassengerAnswer } from '../dangerous-goods/passengers-and-drums.js';
import type { AlternateStrip } from '../go-back/alternates.js';
import type { GoBack } from '../go-back/go-back-lines.js';
import type { LandingHours } from '../go-back/latest-leave.js';
import type { NamedLoad } from '../named-load/named-load.js';
import type { SurfacesHeard } from '../named-load/payload-bar.js';
import type { TieDown } from '../tie-down/tie-down.js';
import type { TieDownSetting } from '../tie-down/tie-down-setting.js';
import type { SheetItem } from '../two-totals/sheet-item.js';
import type { WeightRow } from './weight-rows.js';

/** Whose sheet it is. */
export interface SheetFlight {
  readonly id: string;
  readonly aircraft: string;
  readonly date: IsoDate;
  /** Local. */
  readonly departs: ClockTime;
  readonly pilot: string | null;
  /** From 1; a re-print of the same load keeps its version. */
  readonly version: number;
  /** Null: the first. */
  readonly replaces: number | null;
  /** Check codes that sheets of this version were printed with; absent: none was. */
  readonly printedCodes?: readonly string[];
  /** It is offered, and nobody has approved it; absent: it is approved, or further on. */
  readonly notApproved?: true;
}

/** Everything that a load sheet is made from; nothing of it is looked up anywhere else. */
export interface LoadSheetRequest {
  readonly flight: SheetFlight;
  readonly load: NamedLoad;
  /** Absent: nothing is said. */
  readonly surfacesHeard?: SurfacesHeard;
  /** It has left its base: what is told is for what is still aboard. */
  readonly isUnderWay?: true;
  readonly landingHours: Omit<LandingHours, 'date'>;
  /** By leg: where the flight may go instead of its end. */
  readonly alternates: readonly (readonly AlternateStrip[])[];
  readonly goods: {
    /** Null: the operator has given none; the usual one stands, and says so. */
    readonly set: ParticularsSet | null;
    /** Beside the named drums: empties that come aboard on the way, drums brought home. */
    readonly others: readonly GoodsDrum[];
    /** Number of the approval cited for passengers and drums; null: none. */
    readonly citedApproval: string | null;
    readonly approvalsOnFile: readonly AuthorityApproval[];
  };
  /** Null: the operator has given none for the type. */
  readonly tieDown: TieDownSetting | null;
  readonly toleranceLb: Pounds;
  readonly bookDensityKgPerLitre: KilogramsPerLitre;
}

/** One page on which a flight is loaded, flown and checked; every pound of it is whole and adds up as printed. */
export interface LoadSheet {
  readonly format: 'drumline-sheet/1';
  readonly flight: SheetFlight;
  /** "Version 3 replaces version 2: throw version 2 away."; null: no other paper of the flight. */
  readonly replacesWords: string | null;
  readonly route: readonly string[];
  readonly drums: readonly SheetDrum[];
  readonly cargo: readonly SheetCargo[];
  readonly legs: readonly SheetLeg[];
  /** "0913 is not in the book: 190.0 kg by the crew."; null: every drum is in the book. */
  readonly notInBookWords: string | null;
  /** "Batch J27-041 is held: water found. Aboard: 0523, 0524.": nobody loads by the sheet; null: no drum on it is held. */
  readonly heldWords: string | null;
  readonly fuelWords: string;
  /** Null: no drum is aboard. */
  readonly tieDown: SheetTieDown | null;
  /** Why the particulars are not in the operator's own fields; null: they are. */
  readonly particularsMissing: string | null;
  readonly toleranceLb: Pounds;
  /** Weights and balance hold in every limit, and no rule refuses the load. */
  readonly holds: boolean;
  readonly faults: readonly string[];
  readonly assumptions: string;
  readonly cautions: readonly string[];
  readonly checkCode: string;
  /** Text of the code square. */
  readonly square: string;
}

/** Straps for each drum, reckoned by the heaviest. */
export interface SheetTieDown {
  /** Null: not counted, and `words` say what is missing and where it is entered. */
  readonly counted: TieDown | null;
  readonly words: string;
  /** For paper. */
  readonly brief: string;
  readonly caution: string;
}

export interface SheetDrum {
  readonly position: string;
  readonly armIn: Inches;
  readonly number: string;
  readonly batch: string;
  readonly grossKg: Kilograms;
  readonly lb: Pounds;
  readonly litres: Litres;
  /** Where it is to be left. */
  readonly leaveAt: string;
  readonly offAfterLeg: number;
  /** It is held: neither to be loaded nor to be used. */
  readonly onHold: boolean;
}

export interface SheetCargo {
  readonly name: string;
  /** Null: none given; then nothing of the balance can be judged. */
  readonly place: string | null;
  readonly kg: Kilograms;
  readonly lb: Pounds;
  readonly firstLeg: number;
  readonly lastLeg: number;
}

export interface SheetLeg {
  readonly from: string;
  readonly to: string;
  readonly distanceNm: NauticalMiles;
  /** At `to`. */
  readonly surface: SurfaceState;
  readonly passengers: number;
  readonly rows: readonly WeightRow[];
  readonly totals: SheetTotals;
  /** Most that this flight may take off with: its own limits, and those of landing and zero fuel with its fuel. */
  readonly allowedTakeoffLb: Pounds;
  /** "LOR strip landing limit, 169 lb spare. Drum positions 6 of 6." */
  readonly binds: string;
  readonly goBack: GoBack;
  readonly particulars: readonly Particular[];
  readonly passengersAndDrums: PassengerAnswer;
}

/** The figures of the two pairs of totals on one leg, and what is needed to compare them. */
export interface SheetTotals {
  readonly items: readonly SheetItem[];
  readonly loadKg: Kilograms;
  readonly loadLb: Pounds;
  readonly takeoffLb: Pounds;
  /** With every drum at its planning weight. */
  readonly plannedLoadLb: Pounds;
  readonly plannedTakeoffLb: Pounds;
  /** At the start of the leg, taxi included. */
  readonly fuelLb: Pounds;
  readonly taxiFuelLb: Pounds;
  /** From take-off to landing. */
  readonly tripFuelLb: Pounds;
  readonly operatingLb: Pounds;
  /** Why the kg total is not quite the lb total; null: it is. */
  readonly roundingWords: string | null;
}
