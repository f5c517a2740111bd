import { Link } from 'wouter';
import {
  DrumNumber,
  Main,
  Notice,
  NotKept,
  Page,
  Press,
  timeWords,
  useTerritoryNow,
} from '../../phone/index.js';
import type { FlightHere } from '../use-flight.js';
import { DrumHere } from './drum-here.js';
import { type DrumDone, doneWords } from './drum-reports.js';

interface DrumsHereProps {
  readonly here: FlightHere;
  readonly leg: number;
  readonly place: string;
  readonly first: DrumDone['kind'];
  /** On the load and not said yet. */
  readonly open: readonly string[];
  readonly done: readonly DrumDone[];
  readonly notKept: string | null;
  /** Left or brought back, and in good order. */
  readonly onGood: (numbers: readonly string[]) => void;
  /** How one of them is, or which other one there is. */
  readonly onLook: (drum: string | 'another') => void;
  readonly onKeep: () => void;
}

/** The drums of the load and any others, each with what is said of it. */
export const DrumsHere = (props: DrumsHereProps) => {
  const { here, leg, place, first, open, done, onGood, onLook } = props;
  const { flight, own, held } = here;
  const now = useTerritoryNow();
  const load = flight.stops.flatMap(({ drums }) => drums);
  const said = new Map(own.drums.map((drum) => [drum.drum, drum]));
  const others = done.map(({ drum }) => drum).filter((number) => !load.includes(number));
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
      acts={<Acts {...props} />}
    >
      {!flight.route.slice(1, -1).includes(place) && (
        <Notice kind="note" word="That is all right." title="Any place counts.">
          The plan does not stop you. The dispatcher gets one thing to look at.
        </Notice>
      )}
      {load.length === 0 && <p className="said">No drum is named on this load. Press Another drum.</p>}
      <ul className="rows big">
        {[...open, ...others].map((number) => (
          <DrumHere
            key={number}
            number={number}
            held={held.has(number)}
            done={done.find(({ drum }) => drum === number) ?? null}
            onTap={() => onGood([number])}
            onLook={() => onLook(number)}
          />
        ))}
        {[...said.values()].map(({ drum, kind, place: at, at: when }) => (
          <li key={drum} className="row">
            <span>
              <DrumNumber number={drum} held={held.has(drum)} />
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

const Acts = ({ place, open, done, notKept, onGood, onLook, onKeep }: DrumsHereProps) => (
  <>
    <NotKept words={notKept} />
    <div className="two">
      {open.length > 0 && <Press onPress={() => onGood(open)}>All {open.length}, good</Press>}
      <Press onPress={() => onLook('another')}>Another drum</Press>
    </div>
    <Main
      waits={done.length === 0 ? 'Tap a drum first' : null}
      small={doneWords(done, place)}
      onPress={onKeep}
    >
      Keep
    </Main>
  </>
);
