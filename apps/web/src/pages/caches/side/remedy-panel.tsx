import { useCalendar } from '../../../api/index.js';
import { MoveSling } from '../../../slings/move-sling.js';
import {
  levelWords,
  moveWords,
  notOnWords,
  type SlingRemedy,
  shortWords,
  workWords,
} from '../../../slings/sling-remedy.js';

interface RemedyPanelProps {
  readonly remedy: SlingRemedy;
  /** It was found for a change that is not made yet: what is pressed stands with the acts of its form. */
  readonly isAfterChange?: boolean;
  readonly onMoved?: () => void;
}

/** A shortage, the day on which a sling would come in time, and what moving it does. */
export const RemedyPanel = ({ remedy, isAfterChange = false, onMoved }: RemedyPanelProps) => {
  const { day } = useCalendar();
  const { move } = remedy;
  return (
    <section
      className="remedy"
      aria-label={`Sling to ${remedy.place}${isAfterChange ? ' after the change' : ''}`}
    >
      <p>
        <b>{shortWords(remedy, day)}</b>{' '}
        {move === null ? (
          <>
            No earlier day is offered for the {moveWords(remedy, day)}: each has something against it, and
            whether it weighs more is for people to decide. {notOnWords(remedy, day)}
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
          {!isAfterChange && <MoveSling remedy={remedy} {...(onMoved && { onMoved })} />}
        </>
      )}
    </section>
  );
};
