import { useState } from 'react';
import { Link } from 'wouter';
import { useMay } from '../../api/index.js';
import { Button, MessageLine } from '../../ui/index.js';
import { firstLaden, LoadLegs } from './legs/load-legs.js';
import type { LoadedFlight, Planned } from './load-read.js';
import { filledSince, pickedWords, toDoNext } from './planned-words.js';
import type { LoadActs } from './use-load-acts.js';

interface PlannedLoadProps {
  readonly flight: LoadedFlight;
  readonly planned: Planned;
  readonly acts: LoadActs;
}

/** What the plan puts aboard, while there is no load of drums by number: limits by leg, and what is to be done first. */
export const PlannedLoad = ({ flight, planned, acts }: PlannedLoadProps) => {
  const { assumptions, fuelWords, cautions, legs, bars } = planned;
  const [leg, setLeg] = useState(firstLaden(bars));
  const next = toDoNext(flight);
  const filled = filledSince(flight);
  const mayAmend = useMay()('approve flight', 'decide');
  return (
    <>
      <MessageLine kind="note" what={pickedWords(flight)} why={flight.why ?? ''} next={next.words}>
        <Link href={next.href}>{next.link}</Link>
      </MessageLine>
      {filled !== null && (
        <MessageLine kind="note" what="Drums were filled since" why={filled.words}>
          <Button
            press="n"
            busy={acts.isSending}
            offBecause={mayAmend ? undefined : 'The operations manager or the dispatcher does this.'}
            onPress={() => void acts.amend.run({})}
          >
            {filled.press}
          </Button>
        </MessageLine>
      )}
      <p className="load-assumed">
        <b>Assumed:</b> {assumptions} {fuelWords} <b>{cautions[0]}</b>
      </p>
      <LoadLegs {...{ legs, bars, leg }} drumsAre="planned" onLeg={setLeg} />
    </>
  );
};
