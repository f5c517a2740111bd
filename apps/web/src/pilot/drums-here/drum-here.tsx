import type { DrumDone } from './drum-reports.js';
import { DrumRow } from './drum-row.js';
import { conditionWords } from './how-is-it.js';

interface DrumHereProps {
  readonly number: string;
  readonly held: boolean;
  readonly done: DrumDone | null;
  readonly onTap: () => void;
  readonly onLook: () => void;
}

/** One tap: good. A second opens how it is. */
export const DrumHere = ({ number, held, done, onTap, onLook }: DrumHereProps) => {
  if (done === null)
    return (
      <DrumRow
        number={number}
        held={held}
        look="plain"
        side={<span className="box" aria-hidden="true" />}
        onPress={onTap}
      />
    );
  const isBack = done.kind === 'brought home';
  const condition = conditionWords[done.condition];
  return (
    <DrumRow
      number={number}
      held={held}
      look={isBack ? 'back' : 'picked'}
      side={
        <>
          {isBack ? 'Bring back' : 'Left'}, {condition.toLowerCase()}{' '}
          <span className="box yes" aria-hidden="true" />
        </>
      }
      below={
        done.condition === 'sound' ? (
          'Tap again to change it.'
        ) : (
          <>
            <b>{condition}.</b> On hold from Keep on, on this phone.
          </>
        )
      }
      onPress={onLook}
    />
  );
};
