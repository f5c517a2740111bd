import { Button, MessageLine } from '../../../ui/index.js';
import type { Placed, Standing } from '../load-read.js';
import { isSame, moveWords } from './standing.js';

/** Drums that somebody is moving about, before anything is kept. */
export interface Trial {
  readonly placed: readonly Placed[];
  /** What the server says of it; undefined: not yet. */
  readonly standing: Standing | undefined;
  /** Place that was chosen first. */
  readonly chosen: string | null;
}

interface MovingProps {
  readonly trial: Trial;
  readonly kept: readonly Placed[];
  readonly balance: string;
  readonly busy: boolean;
  readonly onTry: (placed: readonly Placed[]) => void;
  readonly onKeep: () => void;
  readonly onLeave: () => void;
}

/** What the drums would do where they are put, and what would mend it, before the press that keeps them there. */
export const Moving = ({ trial, kept, balance, busy, onTry, onKeep, onLeave }: MovingProps) => {
  const { placed, standing, chosen } = trial;
  const mend = standing?.mend ?? null;
  const off = offWords(isSame(placed, kept), standing);
  return (
    <div className="load-moving">
      <p>
        {chosen === null
          ? 'Choose a drum, then the place it changes with.'
          : `${chosen} is chosen. Choose the place it changes with.`}{' '}
        {!isSame(placed, kept) && <b>{moveWords(kept, placed)}.</b>}
      </p>
      {standing !== undefined && !standing.holds && (
        <MessageLine
          what="Refused: the drums may not stand so"
          why={standing.faults.map((fault) => `${fault}.`).join(' ')}
        >
          {mend !== null && (
            <Button small onPress={() => onTry(mend.positions)}>
              {sentence(mend.words)}
            </Button>
          )}
        </MessageLine>
      )}
      {standing?.holds === true && !isSame(placed, kept) && (
        <MessageLine kind="note" what="The drums may stand so" why={balance} />
      )}
      <div className="acts">
        <Button kind="main" busy={busy} offBecause={off} onPress={onKeep}>
          Keep these places
        </Button>
        <Button onPress={onLeave}>Leave it</Button>
      </div>
    </div>
  );
};

const offWords = (same: boolean, standing: Standing | undefined): string | undefined => {
  if (same) return 'Nothing has moved yet.';
  if (standing === undefined) return 'Checking...';
  return standing.holds ? undefined : 'Keep is off: a limit or the balance does not hold.';
};

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
