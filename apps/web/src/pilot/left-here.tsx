import { useState } from 'react';
import { Link } from 'wouter';
import {
  DrumNumber,
  Main,
  Notice,
  Page,
  type Person,
  Press,
  timeWords,
  useDraft,
  useTerritoryNow,
} from '../phone/index.js';
import { AnotherDrum } from './another-drum.js';
import { type DrumDone, doneWords, drumsDone } from './drum-reports.js';
import { conditionWords, HowIsIt } from './how-is-it.js';
import { type FlightHere, useFlight } from './use-flight.js';
import { useReporting } from './use-reporting.js';

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
  const now = useTerritoryNow();
  const [done, setDone] = useDraft<readonly DrumDone[]>(`drums ${flight.id} ${leg} ${place}`, []);
  const [looking, setLooking] = useState<string | 'another' | null>(null);
  const { report, notKept } = useReporting(person);
  const said = new Map(own.drums.map((drum) => [drum.drum, drum]));
  const load = flight.stops.flatMap(({ drums }) => drums);
  const open = load.filter((number) => !said.has(number));
  const others = done.map(({ drum }) => drum).filter((number) => !load.includes(number));
  const put = (drum: DrumDone) => setDone([...done.filter((each) => each.drum !== drum.drum), drum]);
  const take = (number: string) => setDone(done.filter(({ drum }) => drum !== number));
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
        onKeep={(drum) => {
          put({ drum, kind: first, condition: 'sound' });
          setLooking(null);
        }}
        onBack={() => setLooking(null)}
      />
    );
  if (looking !== null)
    return (
      <HowIsIt
        flight={flight}
        drum={done.find(({ drum }) => drum === looking) ?? { drum: looking, kind: first, condition: 'sound' }}
        onSaid={(drum) => {
          put(drum);
          setLooking(null);
        }}
        onNot={() => {
          take(looking);
          setLooking(null);
        }}
      />
    );
  const planned = flight.route.slice(1, -1).includes(place);
  return (
    <Page
      above={
        <>
          <Link href={`/${flight.id}/${leg}`}>
            {flight.id} · {flight.aircraft} · version {flight.version}
          </Link>
          <span>{timeWords(now)}</span>
        </>
      }
      title={first === 'left at' ? `Left at ${place}` : `Bring back from ${place}`}
      acts={
        <>
          {notKept !== null && <Notice kind="stop" word="Not kept." title={notKept} />}
          <div className="two">
            {open.length > 0 && (
              <Press onPress={() => setDone(open.map((drum) => ({ drum, kind: first, condition: 'sound' })))}>
                All {open.length}, good
              </Press>
            )}
            <Press onPress={() => setLooking('another')}>Another drum</Press>
          </div>
          <Main
            waits={done.length === 0 ? 'Tap a drum first' : null}
            small={doneWords(done, place)}
            onPress={() => void keep()}
          >
            Keep
          </Main>
        </>
      }
    >
      {!planned && (
        <Notice kind="note" word="That is all right." title="Any place counts.">
          The plan does not stop you. The dispatcher gets one thing to look at.
        </Notice>
      )}
      {load.length === 0 && <p className="said">No drum is named on this load. Press Another drum.</p>}
      <ul className="rows big">
        {[...open, ...others].map((number) => (
          <DrumRow
            key={number}
            number={number}
            held={here.held.has(number)}
            done={done.find(({ drum }) => drum === number) ?? null}
            onTap={() => put({ drum: number, kind: first, condition: 'sound' })}
            onLook={() => setLooking(number)}
          />
        ))}
        {[...said.values()].map(({ drum, kind, place: at, at: when }) => (
          <li key={drum} className="row">
            <span>
              <DrumNumber number={drum} held={here.held.has(drum)} />
            </span>
            <span className="side">
              {kind === 'left at' ? `Left at ${at}` : 'Brought back'} {timeWords(when)}
            </span>
          </li>
        ))}
      </ul>
      <Link className="btn inset" href={`/${flight.id}/elsewhere/${leg}`}>
        Somewhere else than {place}
      </Link>
    </Page>
  );
};

interface DrumRowProps {
  readonly number: string;
  readonly held: boolean;
  readonly done: DrumDone | null;
  readonly onTap: () => void;
  readonly onLook: () => void;
}

/** One tap: good. A second opens how it is. */
const DrumRow = ({ number, held, done, onTap, onLook }: DrumRowProps) => {
  const isBack = done?.kind === 'brought home';
  return (
    <li>
      <button
        type="button"
        className={done === null ? 'row' : isBack ? 'row back' : 'row picked'}
        onClick={done === null ? onTap : onLook}
      >
        <span>
          <DrumNumber number={number} held={held} />
        </span>
        <span className="side">
          {done === null
            ? ''
            : `${isBack ? 'Bring back' : 'Left'}, ${conditionWords[done.condition].toLowerCase()}`}{' '}
          <span className={done === null ? 'box' : 'box yes'} aria-hidden="true" />
        </span>
        {done !== null && done.condition !== 'sound' && (
          <span className="sub">
            <b>{conditionWords[done.condition]}.</b> On hold from Keep on, on this phone.
          </span>
        )}
        {done !== null && done.condition === 'sound' && <span className="sub">Tap again to change it.</span>}
      </button>
    </li>
  );
};
