import { ActForm } from '../../../ui/act-form.js';
import { Button } from '../../../ui/index.js';
import type { LoadedFlight } from '../load-read.js';
import type { LoadActs } from '../use-load-acts.js';
import { tooFewFit } from './standing.js';

interface TakeFitProps {
  readonly flight: LoadedFlight;
  readonly instead: NonNullable<LoadedFlight['insteadOfHeld']>;
  readonly acts: LoadActs;
  readonly onClose: () => void;
}

/** All held drums of a flight for fit ones at once: which stay, which go, said before it is done. */
export const TakeFit = ({ flight, instead, acts, onClose }: TakeFitProps) => {
  const { held, fit, stops } = instead;
  const send = async () => {
    if ((await acts.amend.run({ stops })) !== undefined) onClose();
  };
  return (
    <ActForm
      title={`Take ${fit.length} fit drums instead`}
      onClose={onClose}
      onSubmit={() => void send()}
      acts={
        <Button
          kind="main"
          type="submit"
          busy={acts.isSending}
          offBecause={tooFewFit(instead, flight.route[0]!)}
        >
          Make it version {flight.version + 1}
        </Button>
      }
    >
      <p>
        On HOLD, stays at {flight.route[0]}: {held.join(', ')}. Goes instead, the oldest fit: {fit.join(', ')}
        . Places in the cabin and limits are checked anew; printed sheets of version {flight.version} are
        thrown away.
      </p>
    </ActForm>
  );
};
