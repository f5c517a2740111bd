import type { MyDay, PhoneFlight } from '@drumline/contract';
import { compareWithSheet, roundingBeside, type TotalsComparison } from '@drumline/loading';
import { kilograms, pounds } from '@drumline/units';

export interface TypedTotals {
  readonly byHandLb: number;
  readonly byAircraftLb: number;
}

export interface Compared {
  readonly load: TotalsComparison;
  readonly takeoff: TotalsComparison;
  readonly loadLb: number;
  readonly takeoffLb: number;
  readonly agrees: boolean;
  /** Null: it would explain nothing of what is apart. */
  readonly roundingWords: string | null;
}

/** Both pairs of totals, compared on the phone by the sheet that is open; no word says which one is right. */
export const comparedTotals = (flight: PhoneFlight, day: MyDay, typed: TypedTotals): Compared => {
  const sheet = flight.sheet!;
  const { totals } = sheet.legs[0]!;
  const named = new Set(sheet.drums.map(({ number }) => number));
  const otherDrums = day.drums
    .filter(({ number, place }) => place === flight.route[0] && !named.has(number))
    .map(({ number, kg, tareKg }) => ({ name: number, kg: kilograms(kg), tareKg: kilograms(tareKg) }));
  const { toleranceLb } = sheet;
  const beside = { totals, otherDrums };
  const load = compareWithSheet(beside, {
    of: 'load',
    bySheetLb: totals.loadLb,
    typedLb: pounds(typed.byHandLb),
    toleranceLb,
  });
  const takeoff = compareWithSheet(beside, {
    of: 'take-off weight',
    bySheetLb: totals.takeoffLb,
    typedLb: pounds(typed.byAircraftLb),
    toleranceLb,
  });
  return {
    load,
    takeoff,
    loadLb: totals.loadLb,
    takeoffLb: totals.takeoffLb,
    agrees: load.agrees && takeoff.agrees,
    roundingWords: roundingBeside(totals, load),
  };
};
