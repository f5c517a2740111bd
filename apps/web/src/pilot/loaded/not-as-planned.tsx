import { Notice } from '../../phone/index.js';
import { begunAnew, type StepProps } from './loaded-steps.js';

/** What is otherwise than planned, and the way back. */
export const NotAsPlanned = ({ draft, setDraft }: StepProps) => {
  const others = draft.aboard.filter(({ planned, number }) => planned !== number);
  const words = others.map(({ planned, number, position }) => `${number} for ${planned} in ${position}`);
  return (
    <Notice
      kind="note"
      word="Not as planned."
      title={words.length > 0 ? `${words.join(', ')}.` : 'Drums have changed places or stay behind.'}
    >
      Totals and code square follow; base hears with Loaded. A printed sheet shows the plan.{' '}
      <button
        type="button"
        className="as-link"
        onClick={() => setDraft({ ...draft, ...begunAnew, aboard: [] })}
      >
        As planned again
      </button>
    </Notice>
  );
};
