import type { ReactNode } from 'react';
import { useCalendar } from '../../api/index.js';
import { MoveSling } from '../../slings/move-sling.js';
import {
  levelWords,
  moveWords,
  notOnWords,
  type SlingRemedy,
  shortWords,
  workWords,
} from '../../slings/sling-remedy.js';

interface RemedyPanelProps {
  readonly remedy: SlingRemedy;
  /** What is pressed; absent: the sling is moved as it is kept; null: nothing. */
  readonly act?: ReactNode;
  readonly onMoved?: () => void;
}

/** A shortage, the day on which a sling would come in time, and what moving it does. */
export const RemedyPanel = ({ remedy, act, onMoved }: RemedyPanelProps) => {
  const { day } = useCalendar();
  const { move } = remedy;
  return (
    <section
      className="remedy"
      aria-label={`Sling to ${remedy.place}${act === undefined ? '' : ' after the change'}`}
    >
      <p>
        <b>{shortWords(remedy, day)}</b>{' '}
        {move === null ? (
          <>
            No earlier day is better for the {moveWords(remedy, day)}. {notOnWords(remedy, day)}
          </>
        ) : (
          <>
            {move.effect === 'removes' ? 'It stays above its minimum' : 'It is less short'} with the{' '}
            {moveWords(remedy, day)}.
          </>
        )}
      </p>
      {move !== null && (
        <>
          <ul>
            {levelWords(remedy, day).map((words) => (
              <li key={words}>{words}</li>
            ))}
            <li>{workWords(remedy)}</li>
          </ul>
          {remedy.notOn.length > 0 && <p className="slate">{notOnWords(remedy, day)}</p>}
          {act === undefined ? <MoveSling remedy={remedy} {...(onMoved && { onMoved })} /> : act}
        </>
      )}
    </section>
  );
};
