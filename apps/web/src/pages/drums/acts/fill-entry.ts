import { figureIn } from '../../../ui/index.js';
import { millilitresIn } from './figures.js';
import type { FillCheck, Measured } from './fill-check.js';

/** What is typed into the fill form. */
export interface FillFields {
  readonly drum: string;
  readonly place: string;
  readonly batch: string;
  readonly by: 'litres' | 'net';
  readonly litres: string;
  readonly netKg: string;
  readonly temperature: string;
  readonly tareKg: string;
  readonly grossKg: string;
}

/** Null: not everything that the comparison needs is typed. */
export const measuredIn = (
  fields: FillFields,
  densityAt15KgPerLitre: number | undefined,
  { brimLitres, tolerance }: Pick<Measured, 'brimLitres' | 'tolerance'>,
): Measured | null => {
  const [litres, netKg] = [figureIn(fields.litres), figureIn(fields.netKg)];
  const measured = fields.by === 'litres' ? litres !== null && { litres } : netKg !== null && { netKg };
  const [tareKg, grossKg] = [figureIn(fields.tareKg), figureIn(fields.grossKg)];
  const temperatureC = figureIn(fields.temperature);
  if (!measured || tareKg === null || grossKg === null || temperatureC === null) return null;
  if (densityAt15KgPerLitre === undefined) return null;
  return { measured, tareKg, grossKg, temperatureC, densityAt15KgPerLitre, brimLitres, tolerance };
};

interface Filling {
  readonly fields: FillFields;
  readonly base: string;
  readonly batch: string | undefined;
  readonly check: FillCheck | string | null;
}

/** The entry to be sent, or why not yet. A doubt is asked, never refused: the scale is what it is. */
export const fillEntry = ({ fields, base, batch, check }: Filling): object | string => {
  const drum = fields.drum.trim();
  if (drum === '') return 'Write the number of the drum.';
  if (base === '' || batch === undefined) return 'No batch is entered for this base: see Set-up.';
  if (check === null)
    return 'Tare, gross, temperature and litres or net kg are needed, decimals with a point.';
  if (typeof check === 'string') return check;
  return {
    kind: 'filled',
    drum,
    place: base,
    batch,
    millilitres: millilitresIn(check.litres),
    tareKg: figureIn(fields.tareKg),
    grossKg: figureIn(fields.grossKg),
    temperatureC: figureIn(fields.temperature),
    note: `at ${figureIn(fields.temperature)} °C, ${check.litresAt15.toFixed(1)} L at 15 °C`,
  };
};
