import { useCalendar, useMay, useMe } from '../../api/index.js';
import { Button, inWords } from '../../ui/index.js';
import { type Handover, unreadOf } from './handover-read.js';

interface WaitingHandoverProps {
  readonly handover: Handover;
  readonly onOpen: () => void;
}

/** Above everything else: what the shift before has to say, until somebody has signed for all of it. */
export const WaitingHandover = ({ handover, onOpen }: WaitingHandoverProps) => {
  const { when } = useCalendar();
  const isMine = useMe().id === handover.fromAccount;
  const mayTakeOver = useMay()('hand over', 'enter');
  const unread = unreadOf(handover);
  const of = inWords(handover.items.length, 'items');
  return (
    <section className="morning-handover" aria-label="Handover that waits">
      <div className="head">
        <p>
          <b>{isMine ? 'Your handover waits' : `${handover.from} hands over`}</b>, {when(handover.at)}:{' '}
          {unread.length === 0
            ? `all ${of} are signed for; it is not taken over yet.`
            : `${unread.length} of ${of} not signed for.`}
        </p>
        {mayTakeOver && (
          <Button small kind={isMine ? 'plain' : 'main'} onPress={onOpen}>
            {isMine ? 'Open it' : unread.length === 0 ? 'Take over' : 'Read and sign'}
          </Button>
        )}
      </div>
      {unread.length > 0 && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keyboard
        <ol tabIndex={0} aria-label="Not signed for yet">
          {unread.map(({ number, words }) => (
            <li key={number} value={number}>
              {words}
            </li>
          ))}
        </ol>
      )}
    </section>
  );
};
