import { type Centimetres, centimetres, type Litres, litres } from '@drumline/units';

/** Centimetres of wetted stick to litres, for one kind of drum as it stands or lies. */
export type DipTable = DipStick & (UprightDrum | LyingDrum | OwnTable);

interface DipStick {
  readonly name: string;
  /** From mark to mark on the stick: a reading is out by half of it, either way. */
  readonly stickMarksCm: Centimetres;
  readonly reference: string;
}

/** On its end, dipped down to the bottom. */
interface UprightDrum {
  readonly kind: 'upright drum';
  readonly innerDiameterCm: Centimetres;
  readonly innerHeightCm: Centimetres;
}

/** On its side, level, dipped through the bung at the top of its round. */
interface LyingDrum {
  readonly kind: 'lying drum';
  readonly innerDiameterCm: Centimetres;
  readonly innerLengthCm: Centimetres;
}

/** As the operator has measured it: rising, with straight lines between its rows and from 0 cm, 0 L. */
interface OwnTable {
  readonly kind: 'own table';
  readonly rows: readonly { readonly dipCm: Centimetres; readonly litres: Litres }[];
}

/** Litres at a dip, and what half a mark of the stick makes of them. */
export interface DipReading {
  readonly litres: Litres;
  readonly errorLitres: Litres;
}

/**
 * Litres in a drum by the wetted centimetres of a stick. Null: no drum of the table is that deep. A drum is a plain
 * cylinder here, without hoops and dents: standing, the circle times the height; lying, the circular segment
 * r² acos((r - h) / r) - (r - h) √(2 r h - h²) times the length (any textbook of mensuration).
 */
export function litresAtDip(table: DipTable, dip: Centimetres): DipReading | null {
  const most = mostDipCm(table);
  if (!(dip >= 0 && dip <= most)) return null;
  const at = (cm: number) => cubicLitres(table, Math.min(most, Math.max(0, cm)));
  const read = at(dip);
  const half = table.stickMarksCm / 2;
  const error = Math.max(at(dip + half) - read, read - at(dip - half));
  return { litres: litres(read), errorLitres: litres(error) };
}

/** The deepest that a stick can read in a drum of the table. */
export function mostDipCm(table: DipTable): Centimetres {
  if (table.kind === 'upright drum') return table.innerHeightCm;
  if (table.kind === 'lying drum') return table.innerDiameterCm;
  return centimetres(Math.max(...table.rows.map(({ dipCm }) => dipCm)));
}

/** A litre is 1,000 cm³. */
function cubicLitres(table: DipTable, dip: number): number {
  if (table.kind === 'own table') return between(table.rows, dip);
  const radius = table.innerDiameterCm / 2;
  return table.kind === 'upright drum'
    ? (Math.PI * radius ** 2 * dip) / 1000
    : (segment(radius, dip) * table.innerLengthCm) / 1000;
}

/** Area of the circle below a depth. */
function segment(radius: number, depth: number): number {
  const above = radius - depth;
  const chord = Math.sqrt(Math.max(0, 2 * radius * depth - depth ** 2));
  const area = radius ** 2 * Math.acos(Math.min(1, Math.max(-1, above / radius))) - above * chord;
  return Math.max(0, area); // both terms cancel near the bottom
}

function between(rows: OwnTable['rows'], dip: number): number {
  const all = [{ dipCm: 0, litres: 0 }, ...rows];
  const upper = all.findIndex(({ dipCm }, index) => index > 0 && dip <= dipCm);
  const [low, high] = [all[upper - 1]!, all[upper]!];
  if (high.dipCm === low.dipCm) return high.litres;
  return low.litres + ((high.litres - low.litres) * (dip - low.dipCm)) / (high.dipCm - low.dipCm);
}
