import type { Bar } from '../bar-read.js';
import { type DrumsAre, scaleOf } from './bar-scale.js';
import { LegBar, type LegShown, ShortLegBar } from './leg-bar.js';
import { Patterns } from './patterns.js';

interface LoadLegsProps {
  readonly legs: readonly LegShown[];
  readonly bars: readonly Bar[];
  readonly drumsAre: DrumsAre;
  /** The leg in full. */
  readonly leg: number;
  readonly onLeg: (leg: number) => void;
}

/** Every leg with its payload bar on one scale: one in full, the others in a line to open them by. */
export const LoadLegs = ({ legs, bars, drumsAre, leg, onLeg }: LoadLegsProps) => {
  const scale = scaleOf(bars);
  return (
    <div className="load-legs">
      <Patterns />
      {legs.map((each, at) => {
        const shown = { number: at + 1, leg: each, bar: bars[at]!, scale, drumsAre };
        const key = `${each.from}-${each.to}`;
        return at === leg ? (
          <LegBar key={key} {...shown} />
        ) : (
          <ShortLegBar key={key} {...shown} onOpen={() => onLeg(at)} />
        );
      })}
    </div>
  );
};

/** The leg to look at first: the first with drums aboard. */
export const firstLaden = (bars: readonly Bar[]): number =>
  Math.max(
    0,
    bars.findIndex(({ drums }) => drums > 0),
  );
