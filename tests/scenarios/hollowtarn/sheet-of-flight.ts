import { type NamedLoad, type SheetLeg } from '@drumline/loading';
import {
  loadOfFlight,
  type PickedDrum,
  type SheetSettings,
  type StandingFlight,
  sheetOfFlight,
} from '@drumline/planning';
import { pounds } from '@drumline/units';
import { hollowtarn } from './hand-plan.js';

export const scenario = hollowtarn();
export const settings: SheetSettings = {
  goods: {
    set: {
      reference: 'demo operations manual 9.1',
      packaging: 'steel drum 1A1',
      emergencyContact: 'not asked for',
      fields: [
        { label: 'UN number', value: { text: 'UN 1863' } },
        { label: 'Packages', value: { from: 'number and kind of packages' } },
        { label: 'In all', value: { from: 'total quantity' } },
      ],
    },
    others: [],
    citedApproval: null,
    approvalsOnFile: [],
  },
  tieDown: null,
  toleranceLb: pounds(10),
};

export const planned = (id: string): StandingFlight => scenario.handPlan.find((flight) => flight.id === id)!;

export function namedLoad(id: string, picked: readonly PickedDrum[]): NamedLoad {
  const found = loadOfFlight(scenario, planned(id), picked);
  if (!found.found) throw new Error(found.why);
  return found.load;
}

export const numbers = (first: number, count: number) =>
  Array.from({ length: count }, (_, index) => String(first + index).padStart(4, '0'));
export const standing = (
  list: readonly string[],
  place: string,
  positions: readonly string[],
): PickedDrum[] => list.map((number, index) => ({ number, place, position: positions[index] ?? null }));

export const sheetOf = (id: string, load: NamedLoad, pilot: string, departs = '07:10') => {
  const { aircraft, date } = planned(id);
  const flight = { id, aircraft, date, departs, pilot, version: 3, replaces: 2 };
  return sheetOfFlight(scenario, flight, load, settings);
};
export const rowsOf = (leg: SheetLeg) => Object.fromEntries(leg.rows.map(({ label, lb }) => [label, lb]));
export const rowOf = (leg: SheetLeg, label: string) => leg.rows.find((row) => row.label === label)!;
