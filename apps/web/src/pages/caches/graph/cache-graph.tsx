import { memo } from 'react';
import {
  across,
  ageInWords,
  figure,
  type LevelScale,
  levelScale,
  litreLines,
  stepped,
} from '../../../ui/index.js';
import type { Cache } from '../caches-read.js';
import { type DeliveryMark, deliveryMarks, drawDays, topOf } from './graph-scale.js';

interface CacheGraphProps {
  readonly cache: Cache;
  readonly dates: readonly string[];
  readonly fillLitres: number;
  /** Days gone of the first day: 0.25 at six in the morning. */
  readonly now: number;
  readonly width: number;
  readonly height: number;
  /** The finding, for whoever hears it. */
  readonly label: string;
}

/** Levels over the days, each line one path; litres left, drums right, from zero up. */
export const CacheGraph = memo((props: CacheGraphProps) => {
  const { cache, dates, fillLitres, now, width, height, label } = props;
  const scale = levelScale({ width, height }, dates.length, topOf(cache));
  const { left, right, bottom, x, y } = scale;
  const { offered, noDeliveries } = cache.projections;
  const { lastCount } = cache.stock;
  return (
    <svg className="level-graph" width={width} height={height} role="img" aria-label={label}>
      <Axes scale={scale} dates={dates} fillLitres={fillLitres} />
      {cache.medevacReserveLitres > 0 && (
        <rect
          className="reserve"
          x={left}
          y={y(cache.medevacReserveLitres)}
          width={right - left}
          height={bottom - y(cache.medevacReserveLitres)}
        />
      )}
      <path className="minimum" d={across(cache.minimumLitres, scale)} />
      {cache.criticalLitres > 0 && <path className="critical" d={across(cache.criticalLitres, scale)} />}
      <path className="without" d={stepped(noDeliveries.usableLitres, scale)} />
      <path className="with" d={stepped(offered.usableLitres, scale)} />
      {deliveryMarks(cache, dates, x(1) - x(0)).map((mark) => (
        <Delivery key={mark.day} mark={mark} scale={scale} />
      ))}
      <path
        className="draws"
        d={drawDays(cache, dates)
          .map((day) => `M${x(day) - 3} ${bottom + 5}h6l-3 6Z`)
          .join('')}
      />
      <path className="now" d={`M${x(now)} ${scale.top - 4}V${bottom}M${x(now) - 4} ${scale.top - 4}h8`} />
      {width > 190 && lastCount !== null && (
        <text className="counted" x={left + 4} y={9}>
          count {figure(lastCount.countedLitres)} L, {ageInWords(lastCount.ageHours)}
        </text>
      )}
    </svg>
  );
});

const Axes = ({
  scale,
  dates,
  fillLitres,
}: {
  scale: LevelScale;
  dates: readonly string[];
  fillLitres: number;
}) => {
  const { left, right, bottom, height, width, x, y, topLitres } = scale;
  const lines = litreLines(topLitres);
  const ticks = dates.map((_, day) => `M${x(day + 1)} ${bottom}v${day % 7 === 6 ? 5 : 3}`).join('');
  const every = dates.length > 20 ? 7 : 3;
  const named = lines.filter((_, index) => index % Math.ceil(12 / (y(0) - y(lines[1]!))) === 0);
  return (
    <>
      <path className="across" d={lines.map((litres) => across(litres, scale)).join('')} />
      <path className="foot" d={`M${left} ${bottom}H${right}${ticks}`} />
      {named.map((litres) => (
        <text key={litres} x={left - 4} y={y(litres) + 4} textAnchor="end">
          {figure(litres)}
        </text>
      ))}
      {named.map((litres) => (
        <text key={litres} className="drums" x={right + 4} y={y(litres) + 4}>
          {figure(litres / fillLitres)}
        </text>
      ))}
      <text className="drums" x={left - 4} y={9} textAnchor="end">
        L
      </text>
      <text className="drums" x={width} y={9} textAnchor="end">
        drums
      </text>
      {dates.map(
        (date, index) =>
          index % every === 0 && (
            <text key={date} x={x(index + 1)} y={height - 2} textAnchor="middle">
              {Number(date.slice(8))}
            </text>
          ),
      )}
    </>
  );
};

/** Open where a drum is only offered; plum with "?" where somebody has to decide. */
const Delivery = ({ mark, scale }: { readonly mark: DeliveryMark; readonly scale: LevelScale }) => {
  const { day, drums, look, row } = mark;
  const at = scale.x(day);
  const { bottom } = scale;
  return (
    <g className={`delivery ${look}`}>
      <path d={`M${at} ${bottom}v-9m-3 0v-6h6v6Z`} />
      <text x={at} y={bottom - 18 - row * 14} textAnchor="middle">
        {drums}
        {look === 'asked' ? '?' : ''}
      </text>
    </g>
  );
};
