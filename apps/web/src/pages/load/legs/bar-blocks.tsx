import { figure } from '../../../ui/index.js';
import type { Bar } from '../bar-read.js';
import { across, edgesOf, type Scale, shareOf, ticksOf } from './bar-scale.js';

interface BlockProps {
  readonly scale: Scale;
  readonly fromLb: number;
  readonly lb: number;
  readonly height: number;
  readonly fill: string;
  readonly name: string;
  /** On a phone; absent: the name. */
  readonly short?: string;
  readonly below?: string | undefined;
}

/** Narrower than this share of the drawing nothing is written in it. */
const narrow = 4;
/** The same on a phone. */
const narrowOnPhone = 7;

const Block = ({ scale, fromLb, lb, height, fill, name, short = name, below }: BlockProps) => {
  const middle = across(scale, fromLb + lb / 2);
  const written = shareOf(scale, lb) >= narrow;
  const tight = shareOf(scale, lb) < narrowOnPhone ? 'tight' : '';
  return (
    <>
      <rect
        x={across(scale, fromLb)}
        y="1"
        width={`${Math.max(0, shareOf(scale, lb))}%`}
        height={height - 2}
        fill={fill}
        className="load-block"
      />
      {written && (
        <text
          x={middle}
          y={below === undefined ? height / 2 + 4.5 : height / 2 - 2}
          className={`load-on-block ${tight}`}
        >
          {short === name ? (
            name
          ) : (
            <>
              <tspan className="in-full">{name}</tspan>
              <tspan className="in-short">{short}</tspan>
            </>
          )}
        </text>
      )}
      {written && below !== undefined && (
        <text x={middle} y={height / 2 + 12} className={`load-on-block small ${tight}`}>
          {below}
        </text>
      )}
    </>
  );
};

interface BarBlocksProps {
  readonly bar: Bar;
  readonly scale: Scale;
  readonly height: number;
}

/** Operating, drums by number, other load, fuel kept, trip; a break line where it is cut. */
export const BarBlocks = ({ bar, scale, height }: BarBlocksProps) => {
  const edges = edgesOf(bar);
  const tall = height >= 34;
  const lb = (pounds: number) => (tall ? `${figure(pounds)} lb` : undefined);
  let at = bar.operatingLb;
  return (
    <svg className="load-blocks" width="100%" height={height} role="img" aria-label={blocksWords(bar)}>
      <OperatingBlock bar={bar} scale={scale} height={height} below={lb(bar.operatingLb)} />
      {bar.load.map((block, index) => {
        const from = at;
        at += block.lb;
        return (
          <Block
            // biome-ignore lint/suspicious/noArrayIndexKey: freight may lie in several places under one name
            key={`${block.name} ${index}`}
            {...{ scale, height }}
            fromLb={from}
            lb={block.lb}
            fill={block.onHold ? 'url(#load-over)' : 'var(--paper)'}
            name={block.name}
            below={block.onHold && tall ? 'HOLD' : lb(block.lb)}
          />
        );
      })}
      <Block
        {...{ scale, height }}
        fromLb={edges['zero fuel']}
        lb={bar.fuelOnLandingLb}
        fill="url(#load-fuel)"
        name="fuel kept"
        short="fuel"
        below={lb(bar.fuelOnLandingLb)}
      />
      <Block
        {...{ scale, height }}
        fromLb={edges.landing}
        lb={bar.tripLb}
        fill="url(#load-trip)"
        name="trip"
        below={lb(bar.tripLb)}
      />
    </svg>
  );
};

interface OperatingBlockProps extends BarBlocksProps {
  readonly below: string | undefined;
}

/** The aeroplane itself, cut at the left: its figure stands at the right edge and over the cut, which never covers it. */
const OperatingBlock = ({ bar: { operatingLb }, scale, height, below }: OperatingBlockProps) => (
  <>
    <Block
      {...{ scale, height }}
      fromLb={scale.fromLb}
      lb={operatingLb - scale.fromLb}
      fill="var(--sand)"
      name=""
    />
    <BreakLine height={height} />
    <text
      x={across(scale, operatingLb)}
      y={below === undefined ? height / 2 + 4.5 : height / 2 - 2}
      dx="-5"
      className="load-on-block at-edge"
    >
      operating
    </text>
    {below !== undefined && (
      <text
        x={across(scale, operatingLb)}
        y={height / 2 + 12}
        dx="-5"
        className="load-on-block small at-edge"
      >
        {below}
      </text>
    )}
  </>
);

const BreakLine = ({ height }: { readonly height: number }) => {
  const zigzag = `M0 -2l5 ${height * 0.35}l-8 ${height * 0.25}l5 ${height * 0.4 + 4}`;
  return (
    <svg x="0.9%" y="0" overflow="visible" aria-hidden="true">
      <path
        d={`${zigzag}h7l-5 ${-(height * 0.4 + 4)}l8 ${-height * 0.25}l-5 ${-height * 0.35}z`}
        fill="var(--paper)"
      />
      <path d={zigzag} fill="none" stroke="var(--ink)" />
      <path d={zigzag} transform="translate(7 0)" fill="none" stroke="var(--ink)" />
    </svg>
  );
};

/** What a listener hears of the bar; no sum is among it. */
const blocksWords = ({ operatingLb, load, fuelOnLandingLb, tripLb }: Bar): string =>
  [
    `operating ${figure(operatingLb)} lb`,
    ...load.map(({ name, lb, onHold }) => `${name} ${figure(lb)} lb${onHold ? ' HOLD' : ''}`),
    `fuel on landing ${figure(fuelOnLandingLb)} lb`,
    `trip ${figure(tripLb)} lb`,
  ].join(', ');

export const BarTicks = ({ scale }: { readonly scale: Scale }) => (
  <svg className="load-ticks" width="100%" height="20" aria-hidden="true">
    <line x1="0" x2="100%" y1="19" y2="19" stroke="var(--rule)" />
    {ticksOf(scale).map(({ lb, figure: isFigure }) => (
      <g key={lb}>
        <line
          x1={across(scale, lb)}
          x2={across(scale, lb)}
          y1="19"
          y2={isFigure ? 13 : 16}
          stroke="var(--rule)"
        />
        {isFigure && (
          <text x={across(scale, lb)} y="11" className="load-tick">
            {figure(lb)}
          </text>
        )}
      </g>
    ))}
  </svg>
);
