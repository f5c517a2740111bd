import { put, useAct, useCalendar, useMay } from '../api/index.js';
import { Button, ProblemLine } from '../ui/index.js';
import type { SlingRemedy } from './sling-remedy.js';

interface MoveSlingProps {
  readonly remedy: SlingRemedy;
  /** What the remedy was found for and has to be done first; undefined from it: it was refused. */
  readonly before?: { readonly label: string; readonly run: () => Promise<unknown> };
  readonly onMoved?: () => void;
  /** In a form: Enter presses it. */
  readonly type?: 'submit';
}

/** Whether there is a day to move it to, and an entry of the programme to move. */
export const canMove = ({ kept, move }: SlingRemedy): boolean => kept !== null && move !== null;

/** Moves the sling to the day that was shown, as the programme has it: somebody else's change meanwhile is told. */
export const MoveSling = ({ remedy, before, onMoved, type }: MoveSlingProps) => {
  const { day } = useCalendar();
  const may = useMay();
  const { kept, move } = remedy;
  const send = useAct(
    () => put(`/api/slings/${kept!.id}`, { ...kept!.data, date: move!.date }, { version: kept!.version }),
    '/api/morning',
  );
  if (kept === null || move === null || !may('programme', 'enter')) return null;
  const press = async () => {
    if (before !== undefined && (await before.run()) === undefined) return;
    if ((await send.run()) !== undefined) onMoved?.();
  };
  return (
    <>
      <Button
        small={type === undefined}
        kind="main"
        type={type ?? 'button'}
        busy={send.isSending}
        onPress={() => void press()}
      >
        {before?.label ?? 'Move sling'} to {day(move.date)}
      </Button>
      <ProblemLine problem={send.problem} />
    </>
  );
};
