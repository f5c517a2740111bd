import { across, type Edges, type Scale, shareOf } from './bar-scale.js';

interface DimensionProps {
  readonly scale: Scale;
  readonly edgeLb: number;
  readonly limitLb: number;
  readonly binds: boolean;
  /** Weights that are marked through all rows. */
  readonly edges?: Edges;
  readonly height: number;
}

/** A dimension line from a weight to its limit: spare in ink, over in plum with hatching. */
export const Dimension = ({ scale, edgeLb, limitLb, binds, edges, height }: DimensionProps) => {
  const over = limitLb < edgeLb;
  const [from, to] = over ? [limitLb, edgeLb] : [edgeLb, limitLb];
  const ink = over ? 'var(--plum)' : 'var(--ink)';
  const y = height / 2;
  return (
    <svg className="load-dimension" width="100%" height={height} aria-hidden="true">
      {edges !== undefined &&
        [edges['zero fuel'], edges.landing, edges['take-off']].map((lb) => (
          <line
            key={lb}
            x1={across(scale, lb)}
            x2={across(scale, lb)}
            y1="0"
            y2="100%"
            className="load-edge"
          />
        ))}
      {over && (
        <rect
          x={across(scale, from)}
          y={y - 5}
          width={`${shareOf(scale, to - from)}%`}
          height="10"
          fill="url(#load-over)"
        />
      )}
      <line
        x1={across(scale, from)}
        x2={across(scale, to)}
        y1={y}
        y2={y}
        stroke={ink}
        strokeWidth={binds ? 2 : 1}
      />
      <Arrow at={across(scale, from)} y={y} ink={ink} turn={1} />
      <Arrow at={across(scale, to)} y={y} ink={ink} turn={-1} />
      <line
        x1={across(scale, limitLb)}
        x2={across(scale, limitLb)}
        y1={y - height / 2 + 1}
        y2={y + height / 2 - 1}
        stroke={ink}
        strokeWidth={binds ? 5 : 2.5}
      />
    </svg>
  );
};

const Arrow = ({ at, y, ink, turn }: { at: string; y: number; ink: string; turn: 1 | -1 }) => (
  <svg x={at} y={y} overflow="visible" aria-hidden="true">
    <path d={`M${turn * 6} -3L${turn} 0L${turn * 6} 3`} fill="none" stroke={ink} />
  </svg>
);
