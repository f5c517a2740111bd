import { type IsoDate, litres as litresOf, print } from '@drumline/units';
import type { GoodsDrum, GoodsOnLeg } from './goods-aboard.js';

/** One field of the information to the pilot, in the operator's own words and order. */
export interface ParticularsField {
  readonly label: string;
  /** A fixed text of the operator, what the flight fills in, or a line left open on paper. */
  readonly value: { readonly text: string } | { readonly from: ParticularsSource } | 'written by hand';
}

/** What the flight fills in, and the contact that the set names. */
export type ParticularsSource =
  | 'number and kind of packages'
  | 'quantity of each package'
  | 'largest and smallest package'
  | 'total quantity'
  | 'positions'
  | 'drum numbers'
  | 'place of unloading'
  | 'uncleaned empties'
  | 'passengers'
  | 'date of flight'
  | 'approval cited'
  | 'emergency contact';

/** What the particulars take from the flight beside the goods. */
export interface ParticularsFlight {
  readonly passengers: number;
  readonly date: IsoDate;
  /** Approval of the authority under which it is flown; null: none is needed. */
  readonly approval: string | null;
}

/** The operator's set of fields with the rule or manual it follows. */
export interface ParticularsSet {
  readonly reference: string;
  /** "steel drum 1A1". */
  readonly packaging: string;
  /** Who answers day and night, and how; printed where a field asks for it. */
  readonly emergencyContact: string;
  readonly fields: readonly ParticularsField[];
}

export interface Particular {
  readonly label: string;
  /** Null: to be written in by hand. */
  readonly value: string | null;
}

/** What stands in the fixed fields of turbine fuel (UN 1863; names as commonly printed, from memory: the operator checks them). */
export const turbineFuelTexts = {
  unNumber: 'UN 1863',
  shippingName: 'Fuel, aviation, turbine engine',
  hazardClass: '3',
  packingGroup: 'III',
} as const;

/** A usual set of fields for drums of turbine fuel, to begin from and for as long as the operator has given none of its own. */
export const usualParticulars: ParticularsSet = {
  reference: 'a usual set, not the operator’s',
  packaging: 'steel drum',
  emergencyContact: 'not given',
  fields: [
    { label: 'UN number', value: { text: turbineFuelTexts.unNumber } },
    { label: 'Proper shipping name', value: { text: turbineFuelTexts.shippingName } },
    { label: 'Class', value: { text: turbineFuelTexts.hazardClass } },
    { label: 'Packing group', value: { text: turbineFuelTexts.packingGroup } },
    { label: 'Packages', value: { from: 'number and kind of packages' } },
    { label: 'Each', value: { from: 'quantity of each package' } },
    { label: 'Total', value: { from: 'total quantity' } },
    { label: 'Drums', value: { from: 'drum numbers' } },
    { label: 'Positions', value: { from: 'positions' } },
    { label: 'Unload at', value: { from: 'place of unloading' } },
    { label: 'Empties', value: { from: 'uncleaned empties' } },
    { label: 'Passengers', value: { from: 'passengers' } },
    { label: 'Approval', value: { from: 'approval cited' } },
    { label: 'Date', value: { from: 'date of flight' } },
    { label: 'Emergency contact', value: 'written by hand' },
  ],
};

/** The particulars of one leg for the pilot, field by field; empty when no dangerous good is aboard. */
export function particulars(
  set: ParticularsSet,
  goods: GoodsOnLeg,
  flight: ParticularsFlight,
): readonly Particular[] {
  if (goods.filled.length + goods.uncleanedEmpties.length === 0) return [];
  return set.fields.map(({ label, value }) => {
    if (value === 'written by hand') return { label, value: null };
    return { label, value: 'text' in value ? value.text : filledIn(value.from, set, goods, flight) };
  });
}

/** What a sheet says in its rows and at its head anyway. */
const saidBySheet: readonly ParticularsSource[] = ['drum numbers', 'positions', 'date of flight'];

/** The fields for a sheet that is filled in by hand: what is the same on every flight, the rest to be written in. */
export const particularsByHand = ({ fields, emergencyContact }: ParticularsSet): readonly Particular[] =>
  fields.flatMap(({ label, value }) => {
    if (value === 'written by hand') return [{ label, value: null }];
    if ('text' in value) return [{ label, value: value.text }];
    if (saidBySheet.includes(value.from)) return [];
    return [{ label, value: value.from === 'emergency contact' ? emergencyContact : null }];
  });

function filledIn(
  source: ParticularsSource,
  { packaging, emergencyContact }: ParticularsSet,
  { filled, uncleanedEmpties, litres }: GoodsOnLeg,
  { passengers, date, approval }: ParticularsFlight,
): string {
  const all = [...filled, ...uncleanedEmpties];
  switch (source) {
    case 'number and kind of packages':
      return counted(filled.length, packaging) + emptiesWords(uncleanedEmpties, ', and ');
    case 'quantity of each package':
      return [...new Set(filled.map((drum) => print(drum.litres, 'L')))].join(', ') || 'residue only';
    case 'largest and smallest package':
      return filled.length === 0 ? 'residue only' : extremes(filled);
    case 'total quantity':
      return print(litres, 'L');
    case 'positions':
      return all.map(({ position }) => position).join(' ');
    case 'drum numbers':
      return all.map(({ number }) => number).join(' ');
    case 'place of unloading':
      return [...new Set(all.map(({ unloadAt }) => unloadAt))].join(', ');
    case 'uncleaned empties':
      return emptiesWords(uncleanedEmpties, '') || 'none';
    case 'passengers':
      return passengers === 0 ? 'no passengers aboard' : `${passengers} aboard`;
    case 'date of flight':
      return date;
    case 'approval cited':
      return approval ?? 'none';
    case 'emergency contact':
      return emergencyContact;
  }
}

const extremes = (drums: readonly GoodsDrum[]): string => {
  const sizes = drums.map(({ litres }) => litres);
  const [most, least] = [litresOf(Math.max(...sizes)), litresOf(Math.min(...sizes))];
  return `${print(most, 'L')} and ${print(least, 'L')}`;
};

const emptiesWords = (empties: readonly GoodsDrum[], before: string): string =>
  empties.length === 0 ? '' : `${before}${counted(empties.length, 'empty, not cleaned')}`;

const counted = (count: number, kind: string): string => `${count} × ${kind}`;
