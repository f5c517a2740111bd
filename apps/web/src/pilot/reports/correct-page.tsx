import { Link } from 'wouter';
import { Page, type Person, type ShownEntry, useEntries } from '../../phone/index.js';
import { takenBack } from '../../phone/taken-back.js';
import { WhatWasSaid } from '../loaded/what-was-said.js';
import { useFlight } from '../use-flight.js';
import { CorrectDrums } from './correct-drums.js';
import { drumsSaid } from './own-reports.js';
import { TellWrong } from './tell-wrong.js';

interface CorrectPageProps {
  /** Of the entry. */
  readonly seq: number;
  readonly person: Person;
}

/** One report, and how it is put right: by another, never by changing it. */
export const CorrectPage = ({ seq, person }: CorrectPageProps) => {
  const entries = useEntries();
  const entry = entries?.find((each) => each.seq === seq);
  if (entries === undefined) return <Page title="Correct" />;
  if (entry === undefined) return <NothingTo why="No such report on this phone." />;
  const surface = entry.requests.find(({ path }) => path.startsWith('/api/surface-reports/'));
  if (surface !== undefined) return <AnotherSurface entry={entry} place={placeOf(surface.body)} />;
  if (entry.flight === null) return <NothingTo why="Tell base what is wrong with it." />;
  return <OfFlight entry={entry} entries={entries} flight={entry.flight} person={person} />;
};

const placeOf = (body: object): string => (body as { readonly place: string }).place;

interface OfFlightProps {
  readonly entry: ShownEntry;
  readonly entries: readonly ShownEntry[];
  readonly flight: string;
  readonly person: Person;
}

const OfFlight = ({ entry, entries, flight, person }: OfFlightProps) => {
  const here = useFlight(flight);
  const said = drumsSaid([entry], takenBack(entries));
  if (here === undefined) return <Page title="Correct" />;
  if (said.length === 0 || here === null) return <TellWrong entry={entry} flight={flight} person={person} />;
  return <CorrectDrums entry={entry} said={said} here={here} person={person} />;
};

/** Of a strip the newest report counts. */
const AnotherSurface = ({ entry, place }: { readonly entry: ShownEntry; readonly place: string }) => (
  <Page
    above={<WhatWasSaid entry={entry} />}
    title="Report it again"
    acts={
      <>
        <Link className="btn" href="/sent">
          Back
        </Link>
        <Link className="btn main" href={`/surface/${place}`}>
          Surface at {place}, now
        </Link>
      </>
    }
  >
    <p className="said">Of a strip the newest report counts. Say how it is now; this one stays written.</p>
  </Page>
);

const NothingTo = ({ why }: { readonly why: string }) => (
  <Page
    title="Correct"
    acts={
      <Link className="btn" href="/sent">
        Back
      </Link>
    }
  >
    <p className="said">{why}</p>
  </Page>
);
