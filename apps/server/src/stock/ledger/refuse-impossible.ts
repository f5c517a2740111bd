import type { MovementBody } from '@drumline/contract';
import type { Litres } from '@drumline/units';
import { Problem } from '../../http/problem.js';

/**
 * Refuses what no drum can hold or weigh, where it is entered on screen and whoever enters it can look again. What comes
 * in by phone, radio or paper has happened somewhere and is kept.
 */
export const refuseImpossible = (body: MovementBody, brimLitres: Litres): void => {
  if (body.means !== 'screen') return;
  if ((body.kind === 'filled' || body.kind === 'dipped') && body.millilitres > brimLitres * 1000)
    throw impossible(
      'millilitres',
      `${body.millilitres / 1000} L in drum ${body.drum}; to the brim it holds ${brimLitres} L.`,
      'Read the litres again.',
    );
  if (body.kind === 'weighed' && body.grossKg === 0)
    throw impossible('grossKg', `drum ${body.drum} cannot weigh 0 kg.`, 'Read the scale again.');
};

const impossible = (path: string, problem: string, remedy: string): Problem =>
  new Problem('faults', `No drum can be so: ${problem} Nothing was entered.`, [{ path, problem, remedy }]);
