import { Link } from 'wouter';
import { Notice, Press, useTerritoryNow } from '../../phone/index.js';
import type { StepProps } from '../loaded/loaded-steps.js';
import type { FlightHere } from '../use-flight.js';
import { surfaceAt } from './leg-words.js';
import { type TooMany, tooManyFor, withoutTooMany } from './soft-rule.js';

/** Where more is aboard than the surface takes, by the reports that count now. */
export const useTooMany = ({ flight, day, surfaces }: FlightHere): readonly TooMany[] => {
  const now = useTerritoryNow();
  return tooManyFor(flight, (code) => surfaceAt(day, surfaces, { code, now }).state);
};

/** Before Loaded: a surface report, or drums off. */
export const SoftNotice = ({ here, draft, setDraft }: StepProps) => {
  const tooMany = useTooMany(here);
  const [first] = tooMany;
  if (first === undefined) return null;
  const less = withoutTooMany(here.flight, draft, tooMany);
  return (
    <Notice kind="stop" word="Loaded waits." title={tooMany.map(({ words }) => words).join(' ')}>
      <div className="two">
        <Link className="btn" href={`/surface/${first.place}`}>
          Surface report
        </Link>
        {less !== null && (
          <Press onPress={() => setDraft(less.draft)}>Leave {less.off.join(', ')} behind</Press>
        )}
      </div>
    </Notice>
  );
};
