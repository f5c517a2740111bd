import { Link } from 'wouter';
import { Page, type Person, useDraft } from '../../phone/index.js';
import { heldAboard } from '../leg/held-notice.js';
import { useFlight } from '../use-flight.js';
import { CompareTotals } from './compare-totals.js';
import type { LoadedDraft } from './loaded-steps.js';
import { Positions } from './positions.js';
import { TypeTotals } from './type-totals.js';
import { useAsLoaded } from './use-as-loaded.js';

const empty: LoadedDraft = {
  step: 'positions',
  read: [],
  aboard: [],
  standsSo: false,
  byHand: '',
  byAircraft: '',
  attempts: [],
  reason: '',
  second: '',
};

/** Read every drum in its place, type two totals without sight of the sheet's, compare. */
export const Loaded = ({ id, person }: { readonly id: string; readonly person: Person }) => {
  const here = useFlight(id);
  const code = here?.flight.sheet?.checkCode ?? '';
  const [begun, setDraft] = useDraft<LoadedDraft>(`loaded ${id} ${here?.flight.version ?? 0} ${code}`, empty);
  const draft = { ...empty, ...begun };
  const flight = useAsLoaded(here?.flight, draft.aboard);
  if (here === undefined || here === null || flight === undefined) return <Page title={id} />;
  if (flight === null) return <NoLoad id={id} word="Not on this phone yet." why="It needs a signal once." />;
  if (flight.sheet === null) return <NoLoad id={id} word="No load sheet." why={flight.why ?? ''} />;
  const props = { here: { ...here, flight }, draft, setDraft };
  // A drum that was put on hold since is taken off first; a load that does not hold goes no further by itself.
  const isStopped = heldAboard(props.here).length > 0 || !(flight.sheet.holds || draft.standsSo);
  if (draft.step === 'positions' || isStopped) return <Positions {...props} />;
  if (draft.step === 'totals') return <TypeTotals {...props} />;
  return <CompareTotals {...props} person={person} />;
};

const NoLoad = ({ id, word, why }: { readonly id: string; readonly word: string; readonly why: string }) => (
  <Page
    title="Loaded"
    acts={
      <Link className="btn" href={`/${id}/1`}>
        Back to the leg
      </Link>
    }
  >
    <p className="said">
      <b>{word}</b> {why}
    </p>
  </Page>
);
