import './loaded.css';
import type { PhoneFlight } from '@drumline/contract';
import type { DrumAsLoaded } from '@drumline/loading';
import { Link } from 'wouter';
import type { FlightHere } from '../use-flight.js';

/** What has been read and typed so far; of one version only. */
export interface LoadedDraft {
  readonly step: 'positions' | 'totals' | 'compare';
  readonly read: readonly string[];
  /** Every drum with its place, once one of them is another than planned; empty: as planned. */
  readonly aboard: readonly DrumAsLoaded[];
  /** The load does not hold, and stands so in the aeroplane: the crew means to tell it all the same. */
  readonly standsSo: boolean;
  readonly byHand: string;
  readonly byAircraft: string;
  /** Both totals of every comparison so far, the first one included. */
  readonly attempts: readonly string[];
  /** Why the difference is accepted, and who else has seen it. */
  readonly reason: string;
  readonly second: string;
}

/** Another load than the one whose totals were typed: it is read, added and answered for from the beginning. */
export const begunAnew = { step: 'positions', standsSo: false, byHand: '', byAircraft: '' } as const;

export interface StepProps {
  /** With the drums as they are loaded. */
  readonly here: FlightHere;
  readonly draft: LoadedDraft;
  readonly setDraft: (next: LoadedDraft | null) => void;
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
