import { useState } from 'react';
import { Button, Choice, MessageLine } from '../../../ui/index.js';
import type { LoadedFlight } from '../load-read.js';
import type { LoadActs } from '../use-load-acts.js';

interface CommanderProps {
  readonly flight: LoadedFlight;
  readonly acts: LoadActs;
}

/** Who flies it: whoever is not fit is named with the reason, and is not given it. */
export const Commander = ({ flight, acts }: CommanderProps) => {
  const [pilot, setPilot] = useState(
    flight.pilot ?? flight.crew.find(({ whyNot }) => whyNot === null)?.id ?? '',
  );
  const chosen = flight.crew.find(({ id }) => id === pilot);
  const whyNot = chosen?.whyNot ?? null;
  const off =
    whyNot !== null
      ? `${pilot} is not eligible: ${whyNot}.`
      : pilot === flight.pilot
        ? `${pilot} is its commander.`
        : undefined;
  return (
    <section className="section load-commander">
      <h2>Commander</h2>
      <div className="name-one">
        <Choice
          label="Pilot"
          value={pilot}
          options={flight.crew.map((each) => [
            each.id,
            each.whyNot === null ? each.id : `${each.id}, not eligible`,
          ])}
          onChange={setPilot}
        />
        <Button small busy={acts.isSending} offBecause={off} onPress={() => void acts.amend.run({ pilot })}>
          {`Name ${pilot}`}
        </Button>
      </div>
      {flight.crew.length === 0 && <MessageLine kind="note" what="No pilot is kept in the territory" />}
    </section>
  );
};

/** Why the flight is not given to its pilot's phone now. */
export const giveOff = ({ id, state, pilot, needsDecision, crew }: LoadedFlight): string | undefined => {
  if (state === 'offered') return 'Give is off: it is offered. Approve it on the week first.';
  if (state !== 'approved') return `Give is off: ${id} is ${state}.`;
  if (needsDecision !== null) return 'Give is off: it needs a decision first.';
  if (pilot === null) return 'Give is off: no pilot is named.';
  const whyNot = crew.find((each) => each.id === pilot)?.whyNot ?? null;
  return whyNot === null ? undefined : `Give is off: ${pilot} is not eligible: ${whyNot}.`;
};
