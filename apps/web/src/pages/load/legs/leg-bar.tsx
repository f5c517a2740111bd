import './legs.css';
import { figure } from '../../../ui/index.js';
import type { Bar, Limit } from '../bar-read.js';
import type { SheetLeg } from '../sheet-read.js';
import { BarBlocks, BarTicks } from './bar-blocks.js';
import {
  bindsWords,
  type DrumsAre,
  edgesOf,
  limitWords,
  loadWords,
  type Scale,
  spareWords,
} from './bar-scale.js';
import { Dimension } from './dimension.js';

export type LegShown = Pick<SheetLeg, 'from' | 'to' | 'distanceNm'>;

interface LegProps {
  readonly number: number;
  readonly leg: LegShown;
  readonly bar: Bar;
  readonly scale: Scale;
  readonly drumsAre: DrumsAre;
}

/** A leg in full: the bar, and below it every limit as a dimension line, in words at both sides. */
export const LegBar = ({ number, leg, bar, scale, drumsAre }: LegProps) => {
  const edges = edgesOf(bar);
  return (
    <table className="load-leg">
      <caption className="unseen">
        Leg {number}, {leg.from}-{leg.to}. Binds: {bindsWords(bar)}
      </caption>
      <Columns />
      <thead>
        <tr>
          <th scope="col">
            Leg {number}, {leg.from}-{leg.to}
          </th>
          <td>
            <BarTicks scale={scale} />
          </td>
          <th scope="col" className="n slate">
            limit
          </th>
          <th scope="col" className="n slate">
            spare
          </th>
        </tr>
      </thead>
      <tbody>
        <tr className="bar">
          <th scope="row">
            <span className="plain">{leg.distanceNm.toFixed(1)} NM</span>
            {loadWords(bar, drumsAre)}
          </th>
          <td colSpan={1}>
            <BarBlocks bar={bar} scale={scale} height={38} />
          </td>
          <td colSpan={2} />
        </tr>
        {bar.limits.map((limit) => (
          <LimitRow key={limitWords(limit)} limit={limit} scale={scale} edges={edges} />
        ))}
        <tr className="binds">
          <th scope="row">Binds:</th>
          <td colSpan={3}>
            <b>{bindsWords(bar)}</b>
            <span className="relax">
              {bar.forbiddenBy === null && 'What would relax it: '}
              {bar.relax}
            </span>
          </td>
        </tr>
      </tbody>
    </table>
  );
};

const Columns = () => (
  <colgroup>
    <col className="name" />
    <col />
    <col className="limit" />
    <col className="spare" />
  </colgroup>
);

interface LimitRowProps {
  readonly limit: Limit;
  readonly scale: Scale;
  readonly edges: ReturnType<typeof edgesOf>;
}

const LimitRow = ({ limit, scale, edges }: LimitRowProps) => (
  <tr className={`${limit.binds ? 'nearest' : ''} ${limit.holds ? '' : 'over'}`}>
    <th scope="row">{limitWords(limit)}</th>
    <td>
      <Dimension
        scale={scale}
        edgeLb={edges[limit.moment]}
        limitLb={limit.limitLb}
        binds={limit.binds}
        edges={edges}
        height={18}
      />
    </td>
    <td className="n">{figure(limit.limitLb)} lb</td>
    <td className="n spare">{spareWords(limit)}</td>
  </tr>
);

interface ShortLegProps extends LegProps {
  readonly onOpen: () => void;
}

/** Another leg in one line: its bar and the limit that binds; opened in full by its name. */
export const ShortLegBar = ({ number, leg, bar, scale, drumsAre, onOpen }: ShortLegProps) => {
  const binding = bar.limits.find(({ binds }) => binds);
  return (
    <table className="load-leg short">
      <caption className="unseen">
        Leg {number}, {leg.from}-{leg.to}. Binds: {bindsWords(bar)}
      </caption>
      <Columns />
      <tbody>
        <tr>
          <th scope="row">
            <button type="button" className="plain-link" onClick={onOpen}>
              Leg {number}, {leg.from}-{leg.to}
            </button>
            <span className="plain">{loadWords(bar, drumsAre)}</span>
          </th>
          <td>
            <BarBlocks bar={bar} scale={scale} height={26} />
            {binding !== undefined && (
              <Dimension
                scale={scale}
                edgeLb={edgesOf(bar)[binding.moment]}
                limitLb={binding.limitLb}
                binds
                height={12}
              />
            )}
          </td>
          <td className="n">{binding === undefined ? '' : `${figure(binding.limitLb)} lb`}</td>
          <td className={`n spare ${binding?.holds === false ? 'plum' : ''}`}>
            {binding === undefined ? '' : spareWords(binding)}
            <small>{binding === undefined ? '' : limitWords(binding)}</small>
          </td>
        </tr>
      </tbody>
    </table>
  );
};
