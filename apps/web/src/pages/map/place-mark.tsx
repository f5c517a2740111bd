import type { Point } from './chart-scale.js';
import type { Place } from './map-read.js';

interface PlaceMarkProps {
  readonly place: {
    readonly kind: Place['kind'];
    readonly runway: Pick<NonNullable<Place['runway']>, 'oneWay' | 'approachFromDeg'> | null;
  };
  readonly at: Point;
}

/** Square base, triangle strip, circle pad; two short legs on the side from which a one-way strip is approached. */
export const PlaceMark = ({ place: { kind, runway }, at: { x, y } }: PlaceMarkProps) => (
  <g transform={`translate(${x} ${y})`} className={`map-mark ${kind}`}>
    {runway?.oneWay === true && <Approach fromDeg={runway.approachFromDeg} />}
    {kind === 'base' && <rect x="-8" y="-8" width="16" height="16" />}
    {kind === 'strip' && <path d="M0 -9L9 7H-9Z" />}
    {kind === 'pad' && <circle r="7" />}
  </g>
);

/** It comes out from below the mark; dotted where nobody has said which side it is. */
const Approach = ({ fromDeg }: { readonly fromDeg: number | undefined }) => (
  <path
    className={fromDeg === undefined ? 'notch unsaid' : 'notch'}
    d="M-4 -4V-16M4 -4V-16"
    transform={`rotate(${fromDeg ?? 180})`}
  />
);
