import { Link } from 'wouter';
import { useMay } from '../api/index.js';

interface NotSetUpProps {
  /** What there is none of: "No cache is set up yet". */
  readonly what: string;
  readonly why: string;
  /** The step of the set-up, as in its address: `caches`. Absent: where it stands as a whole. */
  readonly step?: string;
  readonly stepWords?: string;
}

/** Nothing to show, because the territory does not say it yet: why, and the way to the step that does. */
export const NotSetUp = ({ what, why, step, stepWords = 'Open Set-up' }: NotSetUpProps) => {
  const maySetUp = useMay()('import and export', 'enter');
  return (
    <div className="message note" role="status">
      <p>
        <b>{what}.</b> {why}
        {!maySetUp && ' The operations manager or set-up does it.'}
      </p>
      <Link className="button small" href={step === undefined ? '/set-up' : `/set-up/${step}`}>
        {stepWords}
      </Link>
    </div>
  );
};
