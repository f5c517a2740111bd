import { decimalsOf } from '@drumline/units';
import { inWords } from '../../../ui/index.js';
import type { Planned } from './card-read.js';

interface StopProps {
  readonly stop: Planned['stops'][number];
}

/** Unload, or stay: the weight on arrival against the limit to leave again. */
export const Stay = ({ stop }: StopProps) => {
  const { printedArrivalLb, takeoffLimitLb, printedOverLb } = stop.unloadOrStay;
  return (
    <p>
      <b>{inWords(printedArrivalLb, 'lb')}</b> arriving, <b>{inWords(takeoffLimitLb, 'lb')}</b> to leave{' '}
      {stop.place}:{' '}
      {printedOverLb > 0 ? (
        <b className="plum">{inWords(printedOverLb, 'lb')} over</b>
      ) : (
        `${inWords(-printedOverLb, 'lb')} spare`
      )}
      .
    </p>
  );
};

export const GoBack = ({ stop: { place, tailwindLimitKt, committalPoint, ifSoft } }: StopProps) => (
  <p>
    {place}: tailwind more than <b>{inWords(tailwindLimitKt, 'kt', decimalsOf(tailwindLimitKt))}</b>
    {committalPoint === null ? (
      '. Committal point: none. '
    ) : (
      <>
        , decide by <b>{committalPoint}</b>.{' '}
      </>
    )}
    {ifSoft}
  </p>
);
