import { type DipTable, litresAtDip } from '@drumline/stock';
import { centimetres } from '@drumline/units';
import { expect, it } from 'vitest';

// Area of flow in a circular conduit, A / d², by relative depth h / d: V. T. Chow, Open-Channel Hydraulics (1959),
// appendix A, geometric elements for circular channel sections; the figures of the table are quoted from memory.
const table: readonly (readonly [depth: number, area: number])[] = [
  [0.1, 0.0409],
  [0.2, 0.1118],
  [0.3, 0.1982],
  [0.4, 0.2934],
  [0.5, 0.3927],
  [0.6, 0.492],
  [0.7, 0.5872],
  [0.8, 0.6736],
  [0.9, 0.7445],
  [1, 0.7854],
];

// 1 m across and 1 m long: A / d² in m² is the volume in m³.
const metre: DipTable = {
  name: 'a metre of round',
  kind: 'lying drum',
  innerDiameterCm: centimetres(100),
  innerLengthCm: centimetres(100),
  stickMarksCm: centimetres(1),
  reference: 'a shape to compare with',
};

it.each(table)('a lying cylinder filled to %s of its diameter holds %s of its square', (depth, area) => {
  expect(litresAtDip(metre, centimetres(depth * 100))!.litres / 1000).toBeCloseTo(area, 4);
});
