import type { PhoneFlight } from '@drumline/contract';
import { Link } from 'wouter';
import { Page, type Person, useDraft } from '../phone/index.js';
import { CompareTotals } from './compare-totals.js';
import { Positions } from './positions.js';
import { TypeTotals } from './type-totals.js';
import { useFlight } from './use-flight.js';

/** What has been read and typed so far; of one version only. */
export interface LoadedDraft {
  readonly step: 'positions' | 'totals' | 'compare';
  readonly read: readonly string[];
  readonly byHand: string;
  readonly byAircraft: string;
  /** Both totals of every comparison so far, the first one included. */
  readonly attempts: readonly string[];
}

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

export const aboveLoaded = ({ id, aircraft, route, version }: PhoneFlight) => (
  <Link href={`/${id}/1`}>
    {id} · {aircraft} · {route[0]} to {route[1]} · version {version}
  </Link>
);

const order: readonly LoadedDraft['step'][] = ['positions', 'totals', 'compare'];
const steps = { positions: '1 Positions', totals: '2 Two totals', compare: '3 Compare' } as const;

export const Steps = ({ now }: { readonly now: LoadedDraft['step'] }) => (
  <ol className="steps">
    {order.map((step) => (
      <li
        key={step}
        className={step === now ? 'now' : order.indexOf(step) < order.indexOf(now) ? 'done' : ''}
        {...(step === now ? { 'aria-current': 'step' } : {})}
      >
        {steps[step]}
      </li>
    ))}
  </ol>
);
