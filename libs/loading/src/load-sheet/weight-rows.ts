import { type Inches, kilogramsFromPounds, type Pounds, pounds } from '@drumline/units';
import { configurationOf } from '../aircraft-type.js';
import { type BalanceMomentName, balanceMoments } from '../balance-moments.js';
import { type Cargo, cargoOnLeg, fuelOnLeg, placeOf, type Standing } from '../cabin.js';
import { drumsAboard, isAboard, type NamedLoad, printedCabinOf } from '../named-load/named-load.js';
import { exactDryLb, type WeighedLeg, type WeightAgainstLimit } from '../named-load/weigh-load.js';
import { printedLb } from '../printed-weights.js';
import type { LegEnd } from '../route-load.js';
import { stripWeights } from '../strip-limit.js';
import { countWords } from '../wording.js';
import { gatherPassengers } from './gather-passengers.js';
import type { SheetCargo } from './load-sheet.js';

/** One row of the weights of a leg, in whole pounds. */
export interface WeightRow {
  readonly label: string;
  /** A `sum` is what stands above it, added up; `again` repeats a weight against another limit. */
  readonly kind: 'start' | 'plus' | 'minus' | 'sum' | 'again';
  readonly lb: Pounds;
  readonly limit: { readonly lb: Pounds; readonly spareLb: Pounds; readonly holds: boolean } | null;
  /** Why there is no limit to hold it against: "closed when soft"; null: there is one, or none is needed. */
  readonly forbiddenBy: string | null;
  readonly cg: RowBalance | null;
}

export interface RowBalance {
  readonly armIn: Inches;
  /** Null: a weight outside the envelope. */
  readonly forwardIn: Inches | null;
  readonly aftIn: Inches | null;
  readonly inside: boolean;
}

/** The weights of a leg as a sum that can be followed by finger, from the operating weight to leaving the strip again. */
export function weightRows(load: NamedLoad, index: number, legs: readonly WeighedLeg[]): WeightRow[] {
  const leg = legs[index]!;
  const { to } = load.request.legs[index]!;
  const cg = balanceOf(load, index);
  const sum = (label: string, lb: Pounds, moment: WeightAgainstLimit['moment']): WeightRow => ({
    ...plain('sum', label, lb),
    limit: nearest(leg, moment),
    cg: cg(moment),
  });
  return [
    plain('start', 'Operating weight', leg.operatingLb),
    ...loadRows(load, index, leg.loadLb),
    sum('zero fuel', leg.zeroFuelLb, 'zero fuel'),
    plain('plus', index === 0 ? 'fuel at start-up' : 'fuel left', pounds(leg.fuelLb - leg.upliftLb)),
    ...(leg.upliftLb === 0 ? [] : [plain('plus', `uplift at ${leg.from}`, leg.upliftLb)]),
    ...(leg.taxiLb === 0 ? [] : [plain('minus', 'taxi', leg.taxiLb)]),
    sum(`take-off ${leg.from}`, leg.takeoffLb, 'take-off'),
    plain('minus', `fuel to ${leg.to}`, leg.tripLb),
    sum(`land ${leg.to}, ${to.surface}`, leg.landingLb, 'landing'),
    ...againRows(load, index, legs),
  ];
}

/** Weights that stand above or on the next leg, against other limits: landing soft, leaving full, leaving as planned. */
function againRows(load: NamedLoad, index: number, legs: readonly WeighedLeg[]): WeightRow[] {
  const { landingLb } = legs[index]!;
  const { to } = load.request.legs[index]!;
  const { type } = load.request;
  const code = to.place.code;
  const flown = load.route.legs;
  const arriving = { lb: landingLb, exactLb: exactDryLb(load, index) + flown[index]!.fuelAtLandingLb };
  const next = legs[index + 1];
  const soft = { ...to, surface: 'soft' } as const;
  const landing = { what: 'landingLb', most: type.maxLandingLb } as const;
  const takeoff = { what: 'takeoffLb', most: type.maxTakeoffLb } as const;
  const rows = to.surface === 'soft' ? [] : [again(`land ${code}, soft`, arriving, soft, landing)];
  if (next === undefined) return rows;
  const planned = {
    lb: next.takeoffLb,
    exactLb: exactDryLb(load, index + 1) + flown[index + 1]!.fuelAtTakeoffLb,
  };
  return [
    ...rows,
    again(`leave ${code} full, ${to.surface}`, arriving, to, takeoff),
    again(`leave ${code} as planned, ${to.surface}`, planned, to, takeoff),
  ];
}

const plain = (kind: WeightRow['kind'], label: string, lb: Pounds): WeightRow => ({
  kind,
  label,
  lb,
  limit: null,
  forbiddenBy: null,
  cg: null,
});

/** More than this, and they are one row: each stands in the list of the load. */
const mostOthers = 2;

/** The drums in one row, which their own column adds up to, the passengers in one, and a row for each other thing aboard. */
function loadRows({ drums, cargo }: NamedLoad, index: number, loadLb: Pounds): WeightRow[] {
  const others = gatherPassengers(cargo.filter((one) => isAboard(one, index)).map(sheetCargo));
  const othersLb = others.reduce((sum, { lb }) => sum + lb, 0);
  const count = drums.filter(({ offAfterLeg }) => index <= offAfterLeg).length;
  return [
    ...(count === 0
      ? []
      : [plain('plus', `${countWords(count, 'drum')}, as weighed`, pounds(loadLb - othersLb))]),
    ...(others.length > mostOthers
      ? [plain('plus', 'other load', pounds(othersLb))]
      : others.map(({ name, lb }) => plain('plus', name, lb))),
  ];
}

/** Cargo as a sheet prints it. */
export const sheetCargo = ({ name, place, weightLb, firstLeg, lastLeg }: Cargo): SheetCargo => ({
  name,
  place,
  kg: kilogramsFromPounds(weightLb),
  lb: printedLb(weightLb),
  firstLeg,
  lastLeg,
});

function nearest(leg: WeighedLeg, moment: WeightAgainstLimit['moment']): WeightRow['limit'] {
  const limit = leg.limits.find((one) => one.moment === moment);
  return limit ? { lb: limit.limitLb, spareLb: limit.spareLb, holds: limit.holds } : null;
}

function again(
  label: string,
  weight: { readonly lb: Pounds; readonly exactLb: number },
  end: LegEnd,
  limit: { readonly what: 'landingLb' | 'takeoffLb'; readonly most: Pounds },
): WeightRow {
  const strip = stripWeights(end);
  const row = plain('again', label, weight.lb);
  if (strip.forbiddenBy !== null) return { ...row, forbiddenBy: strip.forbiddenBy };
  const lb = Math.min(strip[limit.what], limit.most);
  const holds = Math.max(weight.lb, weight.exactLb) <= lb;
  return { ...row, limit: { lb: pounds(lb), spareLb: pounds(lb - weight.lb), holds } };
}

/** Where the centre of gravity lies at each moment of a leg, by the printed weights; null where a load has no place. */
function balanceOf(load: NamedLoad, index: number): (moment: BalanceMomentName) => RowBalance | null {
  const cabin = printedCabinOf(load);
  const configuration = configurationOf(cabin.type, cabin.configuration);
  const aboard = drumsAboard(load.drums, 'printed').filter(({ offAfterLeg }) => index <= offAfterLeg);
  const placed: Standing[] = [
    ...cargoOnLeg(configuration, cabin.cargo, index),
    ...aboard.flatMap(({ position, weightLb }) => {
      const place = placeOf(configuration, position);
      return place ? [{ place, weightLb }] : [];
    }),
  ];
  const everything = load.cargo.filter((one) => isAboard(one, index)).length + aboard.length;
  if (placed.length < everything) return () => null;
  const moments = balanceMoments(cabin.type, configuration, fuelOnLeg(cabin.fuel, index), placed);
  return (moment) => {
    const { armIn, forwardIn, aftIn, inside } = moments.find((one) => one.moment === moment)!;
    return { armIn, forwardIn, aftIn, inside };
  };
}
