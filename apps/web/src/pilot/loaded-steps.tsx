import type { PhoneFlight } from '@drumline/contract';
import { Link } from 'wouter';

/** What has been read and typed so far; of one version only. */
export interface LoadedDraft {
  readonly step: 'positions' | 'totals' | 'compare';
  readonly read: readonly string[];
  readonly byHand: string;
  readonly byAircraft: string;
  /** Both totals of every comparison so far, the first one included. */
  readonly attempts: readonly string[];
}

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
