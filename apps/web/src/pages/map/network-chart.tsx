import { LevelShape } from '../../ui/index.js';
import { chartBorder } from './chart-border.js';
import { type ChartLabels, levelMarkWidth, lineHeight, type PlaceLabel } from './chart-labels.js';
import type { DrawnLeg } from './chart-legs.js';
import type { Box, ChartScale, Point } from './chart-scale.js';
import { PlaceMark } from './place-mark.js';
import type { PlaceRow } from './place-rows.js';

interface NetworkChartProps {
  readonly scale: ChartScale;
  readonly size: { readonly width: number; readonly height: number };
  readonly rows: readonly PlaceRow[];
  readonly legs: readonly DrawnLeg[];
  readonly labels: ChartLabels;
  readonly selected: string | undefined;
  /** What it shows, in a sentence or two. */
  readonly finding: string;
}

/** The chart: nothing in it but what the places table says. */
export const NetworkChart = (props: NetworkChartProps) => {
  const { scale, size, rows, legs, labels, selected, finding } = props;
  const chosen = rows.find(({ place }) => place.code === selected);
  return (
    <svg
      className="map-svg"
      viewBox={`0 0 ${size.width} ${size.height}`}
      width={size.width}
      height={size.height}
      role="img"
      aria-label={finding}
    >
      <Border scale={scale} />
      {legs.map((leg) => (
        <g key={leg.key} className={`map-leg ${leg.line.replace(' ', '-')}`}>
          <path d={pathOf(leg.points)} className="line" />
          <path d={pathOf(leg.arrow)} className="arrow" />
        </g>
      ))}
      {rows.map(({ place }) => (
        <PlaceMark key={place.code} place={place} at={scale.at(place)} />
      ))}
      {legs.map((leg) => (
        <LegCaptions key={leg.key} leg={leg} box={labels.legs.get(leg.key)} />
      ))}
      {rows.map((row) => (
        <PlaceWords key={row.place.code} row={row} label={labels.places.get(row.place.code)!} />
      ))}
      {chosen !== undefined && <Chosen at={scale.at(chosen.place)} />}
    </svg>
  );
};

const pathOf = (points: readonly Point[]): string =>
  `M${points.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}`;

const outside = 10;

const Border = ({ scale }: { readonly scale: ChartScale }) => {
  const { x, y, width, height } = scale.frame;
  const { marks, parallels, meridians } = chartBorder(scale);
  return (
    <g className="map-border">
      {parallels.map(({ at, label }) => (
        <g key={label}>
          <path className="grid" d={`M${x} ${at}h${width}`} />
          <text x={x + 4} y={at - 4}>
            {label}
          </text>
        </g>
      ))}
      {meridians.map(({ at, label }) => (
        <g key={label}>
          <path className="grid" d={`M${at} ${y}v${height}`} />
          <text {...besideMeridian(at, x + width)} y={y + height - 5}>
            {label}
          </text>
        </g>
      ))}
      <rect
        className="outer"
        x={x - outside}
        y={y - outside}
        width={width + 2 * outside}
        height={height + 2 * outside}
      />
      <rect className="inner" x={x} y={y} width={width} height={height} />
      {marks.map((mark) => (
        <rect key={`${mark.x} ${mark.y}`} className="mark" {...mark} />
      ))}
    </g>
  );
};

/** At the right edge it stands before its line: never across the border. */
const besideMeridian = (at: number, right: number) =>
  right - at < 40 ? ({ x: at - 4, textAnchor: 'end' } as const) : { x: at + 4 };

const LegCaptions = ({ leg, box }: { readonly leg: DrawnLeg; readonly box: Box | undefined }) =>
  box === undefined ? null : (
    <g className={`map-captions ${leg.line.replace(' ', '-')}`}>
      {leg.captions.map((text, line) => (
        <text
          key={text}
          x={box.x + box.width / 2}
          y={box.y + (line + 1) * lineHeight - 4}
          className={line > 0 && line === leg.captions.length - 1 ? 'distance' : undefined}
        >
          {text}
        </text>
      ))}
    </g>
  );

const anchorX = ({ box, side }: PlaceLabel): number =>
  side === 'start' ? box.x : side === 'end' ? box.x + box.width : box.x + box.width / 2;

const PlaceWords = ({ row, label }: { readonly row: PlaceRow; readonly label: PlaceLabel }) => {
  const { box, side, words, wordsX } = label;
  const [code, ...name] = label.name.split(' ');
  const top = box.y + lineHeight;
  // Left of its place, the level's mark stands at the place's side, and nothing between label and place.
  const right = box.x + box.width;
  const besideMark = row.level === null ? 0 : levelMarkWidth;
  return (
    <g className="map-label">
      <text x={anchorX(label)} y={top - 3} textAnchor={side}>
        <tspan className="code">{code}</tspan> {name.join(' ')}
      </text>
      {row.level !== null && (
        <g transform={`translate(${side === 'end' ? right - levelMarkWidth + 4 : wordsX} ${top + 1})`}>
          <LevelShape level={row.level} />
        </g>
      )}
      <text
        className={`words ${row.level ?? ''}`}
        x={side === 'end' ? right - besideMark : wordsX + besideMark}
        y={top + lineHeight - 4}
        textAnchor={side === 'end' ? 'end' : 'start'}
      >
        {words}
      </text>
    </g>
  );
};

const half = 15;

const Chosen = ({ at: { x, y } }: { readonly at: Point }) => (
  <rect className="map-chosen" x={x - half} y={y - half} width={2 * half} height={2 * half} />
);
