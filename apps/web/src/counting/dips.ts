import { dipTableSchema } from '@drumline/contract';
import { type DipTable, litresAtDip, mostDipCm } from '@drumline/stock';
import { centimetres, litres, print } from '@drumline/units';
import { z } from 'zod';
import { useRead } from '../api/index.js';

const policySchema = z.object({ data: z.object({ dipTables: z.array(dipTableSchema).optional() }) });

/** The operator's, the usual one first; none: dips are written in litres. */
export const useDipTables = (): readonly DipTable[] =>
  useRead('/api/policy/current', policySchema).value?.data.dipTables ?? [];

export interface DipsRead {
  /** Of all the drums together, to the litre; undefined: nothing typed, or not a reading. */
  readonly litres?: number;
  readonly drums: number;
  /** "34 cm = 87 L, ± 1.3 L; 51.5 cm = 132 L, ± 1.3 L", or what is wrong. */
  readonly words: string;
}

/** "34, 51.5" or "34 51,5" of a stick in centimetres, drum after drum, by one table. */
export const readDips = (typed: string, table: DipTable): DipsRead => {
  const sticks = typed
    .split(/[;\s]+|,\s+/)
    .map((each) => each.replace(/cm$/i, '').replace(',', '.'))
    .filter((each) => each !== '');
  const read = sticks.map((cm) => ({
    cm,
    at: /^\d+(\.\d+)?$/.test(cm) ? litresAtDip(table, centimetres(Number(cm))) : undefined,
  }));
  const wrong = read.find(({ at }) => at === undefined || at === null);
  if (wrong !== undefined)
    return {
      drums: read.length,
      words:
        wrong.at === null
          ? `No ${table.name} is deeper than ${print(mostDipCm(table), 'cm', 1)}.`
          : `${wrong.cm} is no figure of a stick: write 34 or 34.5.`,
    };
  if (read.length === 0) return { drums: 0, words: '' };
  return {
    litres: Math.round(read.reduce((sum, { at }) => sum + at!.litres, 0)),
    drums: read.length,
    words: read
      .map(({ cm, at }) => `${cm} cm = ${print(at!.litres, 'L')}, ± ${print(at!.errorLitres, 'L', 1)}`)
      .join('; '),
  };
};

/** What a count found that was seen drum by drum: full ones, and the open ones by the stick. */
export const litresCounted = (sealed: number, fillLitres: number, openLitres: number): number =>
  litres(sealed * fillLitres + openLitres);
