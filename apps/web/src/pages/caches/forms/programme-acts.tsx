import { MoveSling } from '../../../slings/move-sling.js';
import type { SlingRemedy } from '../../../slings/sling-remedy.js';
import { Button } from '../../../ui/index.js';
import type { Line } from './programme-read.js';

interface ProgrammeActsProps {
  readonly kind: Line['kind'] | undefined;
  /** Slings that can be moved so that the change leaves no cache short. */
  readonly remedies: readonly SlingRemedy[];
  readonly busy: boolean;
  readonly off: string | undefined;
  readonly change: () => Promise<unknown>;
  readonly onChange: () => void;
  readonly onMoved: () => void;
}

/** The change with its remedy comes first, and Enter presses it; the change alone is the last choice, and says that it is alone. */
export const ProgrammeActs = (props: ProgrammeActsProps) => {
  const { kind, remedies, busy, off, change, onChange, onMoved } = props;
  if (remedies.length === 0)
    return (
      <Button kind="main" type="submit" busy={busy} offBecause={off}>
        {kind === 'slings' ? 'Move sling' : 'Change task'}
      </Button>
    );
  return (
    <>
      {remedies.map((remedy) => (
        <MoveSling
          key={remedy.place}
          type="submit"
          remedy={remedy}
          before={{ label: 'Change task and move sling', run: change }}
          onMoved={onMoved}
        />
      ))}
      <Button kind="grave" busy={busy} onPress={onChange}>
        Change task only
      </Button>
    </>
  );
};
