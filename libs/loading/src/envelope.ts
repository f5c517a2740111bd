import { type Inches, inches, type Pounds, pounds } from '@drumline/units';
import type { EnvelopePoint } from './aircraft-type.js';

/** A weight and where it acts. */
export interface Mass {
  readonly weightLb: Pounds;
  readonly armIn: Inches;
}

/**
 * Total weight in lb and the arm in inches at which it acts: sum of moments over sum of weights.
 * Items with negative weight take something away.
 */
export function centreOfGravity(items: readonly Mass[]): Mass {
  const weight = items.reduce((sum, item) => sum + item.weightLb, 0);
  const moment = items.reduce((sum, item) => sum + item.weightLb * item.armIn, 0);
  return { weightLb: pounds(weight), armIn: inches(moment / weight) };
}

/** Forward and aft limit in inches at a weight, linear between the points; null outside the envelope's weights. */
export function envelopeAt(
  envelope: readonly EnvelopePoint[],
  weightLb: number,
): { readonly forwardIn: Inches; readonly aftIn: Inches } | null {
  const next = envelope.findIndex((point) => point.weightLb >= weightLb);
  if (next < 0) return null;
  const above = envelope[next]!;
  if (above.weightLb === weightLb) return above;
  if (next === 0) return null;
  const below = envelope[next - 1]!;
  const share = (weightLb - below.weightLb) / (above.weightLb - below.weightLb);
  return {
    forwardIn: inches(below.forwardIn + share * (above.forwardIn - below.forwardIn)),
    aftIn: inches(below.aftIn + share * (above.aftIn - below.aftIn)),
  };
}
