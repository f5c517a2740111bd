import { useState } from 'react';
import { Link } from 'wouter';
import { MessageLine } from '../../ui/index.js';
import { firstLaden, LoadLegs } from './legs/load-legs.js';
import type { LoadedFlight, Planned } from './load-read.js';
import { pickedWords, toDoNext } from './planned-words.js';

interface PlannedLoadProps {
  readonly flight: LoadedFlight;
  readonly planned: Planned;
}

/** What the plan puts aboard, while there is no load of drums by number: limits by leg, and what is to be done first. */
export const PlannedLoad = ({ flight, planned }: PlannedLoadProps) => {
  const { assumptions, fuelWords, cautions, legs, bars } = planned;
  const [leg, setLeg] = useState(firstLaden(bars));
  const next = toDoNext(flight);
  return (
    <>
      <MessageLine kind="note" what={pickedWords(flight)} why={flight.why ?? ''} next={next.words}>
        <Link href={next.href}>{next.link}</Link>
      </MessageLine>
      <p className="load-assumed">
        <b>Assumed:</b> {assumptions} {fuelWords} <b>{cautions[0]}</b>
      </p>
      <LoadLegs {...{ legs, bars, leg }} drumsAre="planned" onLeg={setLeg} />
    </>
  );
};
