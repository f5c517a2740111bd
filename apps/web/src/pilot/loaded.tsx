import { Link } from 'wouter';
import { Page, type Person, useDraft } from '../phone/index.js';
import { CompareTotals } from './compare-totals.js';
import type { LoadedDraft } from './loaded-steps.js';
import { Positions } from './positions.js';
import { TypeTotals } from './type-totals.js';
import { useFlight } from './use-flight.js';

const empty: LoadedDraft = { step: 'positions', read: [], byHand: '', byAircraft: '', attempts: [] };

/** Read every drum in its place, type two totals without sight of the sheet's, compare. */
export const Loaded = ({ id, person }: { readonly id: string; readonly person: Person }) => {
  const here = useFlight(id);
  const code = here?.flight.sheet?.checkCode ?? '';
  const [draft, setDraft] = useDraft<LoadedDraft>(`loaded ${id} ${here?.flight.version ?? 0} ${code}`, empty);
  if (here === undefined || here === null) return <Page title={id} />;
  const { flight } = here;
  if (flight.sheet === null)
    return (
      <Page
        title="Loaded"
        acts={
          <Link className="btn" href={`/${id}/1`}>
            Back to the leg
          </Link>
        }
      >
        <p className="said">
          <b>No load sheet.</b> {flight.why}
        </p>
      </Page>
    );
  const props = { here, draft, setDraft };
  if (draft.step === 'positions') return <Positions {...props} />;
  if (draft.step === 'totals') return <TypeTotals {...props} />;
  return <CompareTotals {...props} person={person} />;
};
