import { useState } from 'react';
import { Page, type Person, useDraft } from '../../phone/index.js';
import { useReporting } from '../reports/use-reporting.js';
import { type FlightHere, useFlight } from '../use-flight.js';
import { AnotherDrum } from './another-drum.js';
import { type DrumDone, drumsDone } from './drum-reports.js';
import { DrumsHere } from './drums-here.js';
import { HowIsIt } from './how-is-it.js';

interface LeftHereProps {
  readonly id: string;
  readonly leg: number;
  /** Where the drums are: of the plan, or any other. */
  readonly place: string;
  /** What a first tap says. */
  readonly first: DrumDone['kind'];
  readonly person: Person;
}

/** Drum by drum: left here or brought back, and how it is. */
export const LeftHere = (props: LeftHereProps) => {
  const here = useFlight(props.id);
  if (here === undefined || here === null) return <Page title={props.place} />;
  return <Drums {...props} here={here} />;
};

const Drums = ({ here, leg, place, first, person }: LeftHereProps & { readonly here: FlightHere }) => {
  const { flight, own } = here;
  // Of the leg, whatever the place: who taps drums and then says that it was somewhere else has tapped them.
  const [done, setDone] = useDraft<readonly DrumDone[]>(`drums ${flight.id} ${leg}`, []);
  const [looking, setLooking] = useState<string | 'another' | null>(null);
  const { report, notKept } = useReporting(person);
  const said = new Set(own.drums.map(({ drum }) => drum));
  const open = flight.stops.flatMap(({ drums }) => drums).filter((number) => !said.has(number));
  const good = (drum: string): DrumDone => ({ drum, kind: first, condition: 'sound' });
  const without = (number: string) => done.filter(({ drum }) => drum !== number);
  const put = (next: readonly DrumDone[]) => {
    setDone(next);
    setLooking(null);
  };
  const keep = () =>
    report(
      (reporter) => drumsDone(reporter, flight, { done, place, leg }),
      `/${flight.id}/${leg}`,
      () => setDone(null),
    );
  if (looking === 'another')
    return (
      <AnotherDrum
        here={here}
        place={place}
        open={open}
        onKeep={(number) => put([...without(number), good(number)])}
        onBack={() => setLooking(null)}
      />
    );
  if (looking !== null)
    return (
      <HowIsIt
        flight={flight}
        drum={done.find(({ drum }) => drum === looking) ?? good(looking)}
        onSaid={(drum) => put([...without(drum.drum), drum])}
        onNot={() => put(without(looking))}
      />
    );
  return (
    <DrumsHere
      {...{ here, leg, place, first, open, done, notKept }}
      onGood={(numbers) => put([...done.filter(({ drum }) => !numbers.includes(drum)), ...numbers.map(good)])}
      onLook={setLooking}
      onKeep={() => void keep()}
    />
  );
};
