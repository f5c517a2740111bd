import { useCalendar, useRead } from '../../api/index.js';
import { type DrumLife, enteredSchema } from './drums-read.js';
import { sentenceOf, sourceOf } from './sentences.js';
import { timelineEntries } from './timeline-entries.js';

interface DrumTimelineProps {
  readonly drum: DrumLife;
  readonly onCorrect: (id: string) => void;
}

/** What happened, in plain sentences, each with its source under it. Nothing is ever taken out. */
export const DrumTimeline = ({ drum, onCorrect }: DrumTimelineProps) => {
  const { date, isoDay, time, when } = useCalendar();
  return (
    <ol className="drums-timeline" aria-label="What happened">
      {timelineEntries(drum).map((entry) => {
        const { movement, reversedBy, sameAs } = entry;
        const isReversed = reversedBy.length > 0;
        return (
          <li key={movement.id}>
            <b>
              {shortDate(date(isoDay(movement.happenedAt)))} <small>{time(movement.happenedAt)}</small>
            </b>
            <div>
              <span className={isReversed ? 'was' : undefined}>{sentenceOf(movement)}</span>
              {reversedBy.map((id) => (
                <Reversal key={id} id={id} />
              ))}
              {sameAs !== null && <b> The same event, reported again.</b>}
              <small className="drums-source">
                {sourceOf(movement, when)}
                {!isReversed && movement.kind !== 'corrected' && (
                  <button
                    type="button"
                    className="plain-link"
                    aria-label={`Correct this entry: ${sentenceOf(movement)}`}
                    onClick={() => onCorrect(movement.id)}
                  >
                    Correct
                  </button>
                )}
              </small>
            </div>
          </li>
        );
      })}
      {drum.retestDue !== null && (
        <li>
          <b>{shortDate(date(drum.retestDue))}</b>
          <div className="slate">Retest due: not usable after this day without a laboratory pass.</div>
        </li>
      )}
    </ol>
  );
};

/** The entry that takes this one back: both stand in the ledger. */
const Reversal = ({ id }: { readonly id: string }) => {
  const { when } = useCalendar();
  const entered = useRead(`/api/movements/${id}`, enteredSchema).value;
  if (entered === undefined) return <b> Reversed.</b>;
  return (
    <span className="drums-reversal">
      <b>{sentenceOf(entered.movement)}</b> <small>{sourceOf(entered.movement, when)}</small>
    </span>
  );
};

/** "Mon 14 June 2027" without the weekday, which a line of years does not need. */
const shortDate = (words: string): string =>
  words.replace(/^\S+ /, '').replace(/([A-Z][a-z]{2})[a-z]* /, '$1 ');
