import type { DipTable } from '@drumline/stock';
import { centimetres } from '@drumline/units';

/** For tests. */
export const upright: DipTable = {
  name: 'upright drum',
  kind: 'upright drum',
  innerDiameterCm: centimetres(57.2),
  innerHeightCm: centimetres(84.1),
  stickMarksCm: centimetres(1),
  reference: 'test',
};
