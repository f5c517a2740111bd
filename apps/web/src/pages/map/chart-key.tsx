import { figure } from '../../ui/index.js';
import { scaleBarNm } from './chart-border.js';
import type { LegLine } from './day-legs.js';
import { PlaceMark } from './place-mark.js';

const kinds = [
  ['base', { kind: 'base', runway: null }],
  ['strip', { kind: 'strip', runway: null }],
  [
    'one-way strip, legs on the approach side',
    { kind: 'strip', runway: { oneWay: true, approachFromDeg: 180 } },
  ],
  ['pad', { kind: 'pad', runway: null }],
] as const;

const lines: readonly (readonly [LegLine, string])[] = [
  ['offered', 'offered'],
  ['approved', 'approved, given'],
  ['away', 'loaded, away'],
  ['flown', 'home'],
  ['in question', 'needs a decision'],
  ['booked', 'booked, no drums'],
  ['sling', 'sling'],
];

/** What marks and lines mean, and how long a length is. */
export const ChartKey = ({ pixelsPerNm }: { readonly pixelsPerNm: number }) => (
  <ul className="map-key" aria-label="Key">
    <li>
      <ScaleBar pixelsPerNm={pixelsPerNm} />
    </li>
    <li>
      <svg viewBox="-8 -10 16 20" width="16" height="20" aria-hidden="true">
        <path d="M0 9V-8M-4 -2L0 -8L4 -2" className="north" />
      </svg>
      True north is up
    </li>
    {kinds.map(([words, place]) => (
      <li key={words}>
        <svg viewBox="-11 -12 22 32" width="17" height="24" aria-hidden="true">
          <PlaceMark place={place} at={{ x: 0, y: 0 }} />
        </svg>
        {words}
      </li>
    ))}
    {lines.map(([line, words]) => (
      <li key={line}>
        <svg
          viewBox="0 0 28 10"
          width="28"
          height="10"
          aria-hidden="true"
          className={`map-leg ${line.replace(' ', '-')}`}
        >
          <path d="M0 5H28" className="line" />
        </svg>
        {words}
      </li>
    ))}
    <li>
      <b>L ?</b> counts a flight that needs a decision
    </li>
  </ul>
);

const ScaleBar = ({ pixelsPerNm }: { readonly pixelsPerNm: number }) => {
  const length = scaleBarNm(pixelsPerNm, 180);
  const width = length * pixelsPerNm;
  return (
    <svg
      className="map-scale-bar"
      viewBox={`0 0 ${width + 36} 20`}
      width={width + 36}
      height={20}
      role="img"
      aria-label={`Scale: the bar is ${figure(length)} NM at the middle of the chart`}
    >
      {[0, 1, 2, 3, 4].map((piece) => (
        <rect
          key={piece}
          className={piece % 2 === 0 ? 'full' : 'open'}
          x={1 + (piece * width) / 5}
          y={13}
          width={width / 5}
          height={5}
        />
      ))}
      <text x="1" y="10">
        0
      </text>
      <text x={width + 1} y="10" textAnchor="middle">
        {figure(length)} NM
      </text>
    </svg>
  );
};
