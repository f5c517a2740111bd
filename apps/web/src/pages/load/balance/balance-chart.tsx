import './balance.css';
import { figure } from '../../../ui/index.js';
import type { LoadedFlight } from '../load-read.js';
import { type Frame, frameOf, type Mark } from './balance-scale.js';

interface BalanceChartProps {
  readonly type: LoadedFlight['type'];
  /** As the load stands, or is being tried. */
  readonly marks: readonly Mark[];
  /** When the strip is soft: hollow. */
  readonly fallback: readonly Mark[];
  readonly words: string;
}

/** The envelope with zero fuel as a square and take-off as a circle, a dashed path between them. */
export const BalanceChart = ({ type, marks, fallback, words }: BalanceChartProps) => {
  const frame = frameOf(type, [...marks, ...fallback]);
  return (
    <svg className="load-balance" width="100%" height="100%" role="img" aria-label={`Balance. ${words}`}>
      <Grid frame={frame} />
      <Envelope type={type} frame={frame} />
      <Path frame={frame} marks={fallback} hollow />
      <Path frame={frame} marks={marks} />
    </svg>
  );
};

const pc = (value: number): string => `${value.toFixed(2)}%`;

const Grid = ({ frame: { arms, weights, x, y } }: { readonly frame: Frame }) => {
  const [left, right] = [x(arms[0]!), x(arms.at(-1)!)];
  const [top, foot] = [y(weights.at(-1)!), y(weights[0]!)];
  return (
    <>
      {weights.map((lb) => (
        <g key={lb}>
          <line x1={pc(left)} x2={pc(right)} y1={pc(y(lb))} y2={pc(y(lb))} className="grid" />
          {lb % 1000 === 0 && (
            <text x={pc(left - 1)} y={pc(y(lb))} dy={lb === weights[0] ? -1 : 4} textAnchor="end">
              {figure(lb)}
            </text>
          )}
        </g>
      ))}
      {arms.map((arm) => (
        <g key={arm}>
          <line x1={pc(x(arm))} x2={pc(x(arm))} y1={pc(top)} y2={pc(foot)} className="grid" />
          <text x={pc(x(arm))} y={pc(foot)} dy="15" textAnchor="middle">
            {arm}
          </text>
        </g>
      ))}
      <text x={pc(left - 1)} y={pc(top)} dy="-8" textAnchor="end">
        lb
      </text>
      <text x={pc(right)} y="100%" dy="-3" textAnchor="end">
        arm, in aft of the datum
      </text>
    </>
  );
};

const Envelope = ({ type, frame: { x, y, arms, weights } }: { type: LoadedFlight['type']; frame: Frame }) => {
  const forward = type.envelope.map(({ weightLb, forwardIn }) => [x(forwardIn), y(weightLb)] as const);
  const aft = type.envelope.map(({ weightLb, aftIn }) => [x(aftIn), y(weightLb)] as const).toReversed();
  const round = [...forward, ...aft];
  const zeroFuel = y(type.maxZeroFuelLb);
  return (
    <>
      {round.map(([px, py], at) => {
        const [nx, ny] = round[(at + 1) % round.length]!;
        return (
          <line
            // biome-ignore lint/suspicious/noArrayIndexKey: the sides of an envelope have no name
            key={at}
            className="envelope"
            x1={pc(px)}
            y1={pc(py)}
            x2={pc(nx)}
            y2={pc(ny)}
          />
        );
      })}
      <line
        className="zero-fuel"
        x1={pc(x(arms[0]!))}
        x2={pc(x(arms.at(-1)!))}
        y1={pc(zeroFuel)}
        y2={pc(zeroFuel)}
      />
      {/* Above the frame, where no mark and no name can stand on the figure. */}
      <text x={pc(x(arms.at(-1)!))} y={pc(y(weights.at(-1)!))} dy="-6" textAnchor="end">
        dashed: zero fuel limit {figure(type.maxZeroFuelLb)} lb
      </text>
    </>
  );
};

interface PathProps {
  readonly frame: Frame;
  readonly marks: readonly Mark[];
  readonly hollow?: boolean;
}

const Path = ({ frame: { x, y }, marks, hollow = false }: PathProps) => {
  const [one, other] = marks;
  return (
    <g className={hollow ? 'hollow' : 'solid'}>
      {one !== undefined && other !== undefined && (
        <line
          className="path"
          x1={pc(x(one.armIn))}
          y1={pc(y(one.weightLb))}
          x2={pc(x(other.armIn))}
          y2={pc(y(other.weightLb))}
        />
      )}
      {marks.map(({ kind, armIn, weightLb }) => (
        <svg key={kind} x={pc(x(armIn))} y={pc(y(weightLb))} overflow="visible" aria-hidden="true">
          <MarkShape kind={kind} />
        </svg>
      ))}
    </g>
  );
};

const MarkShape = ({ kind }: Pick<Mark, 'kind'>) =>
  kind === 'zero fuel' ? (
    <rect className="mark" x="-5" y="-5" width="10" height="10" />
  ) : (
    <circle className="mark" r="5.5" />
  );

/** The arms of the marks in words, below the graph: beside marks that are close they would lie over each other. */
export const MarkNames = ({ marks, fallback }: Pick<BalanceChartProps, 'marks' | 'fallback'>) => (
  <ul className="load-balance load-marks" aria-label="Marks in the graph">
    {[...marks, ...fallback].map(({ kind, armIn }, at) => {
      const isHollow = at >= marks.length;
      return (
        <li key={`${kind} ${isHollow}`} className={isHollow ? 'hollow' : 'solid'}>
          <svg width="14" height="14" viewBox="-7 -7 14 14" aria-hidden="true">
            <MarkShape kind={kind} />
          </svg>
          {isHollow ? 'if soft, ' : ''}
          {kind} {armIn.toFixed(1)} in
        </li>
      );
    })}
  </ul>
);
