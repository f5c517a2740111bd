import { useEffect, useState } from 'react';
import { z } from 'zod';
import { ApiProblem, type FieldFault, post } from '../../../api/index.js';
import { Button } from '../../../ui/index.js';
import type { Amendment } from './amendment.js';

const answerSchema = z.object({
  faults: z.array(z.object({ path: z.string(), problem: z.string(), remedy: z.string() })),
  departs: z.string().nullable(),
});

export type AmendCheck =
  | { readonly state: 'nothing to check' | 'checking' }
  | {
      readonly state: 'checked';
      readonly faults: readonly FieldFault[];
      /** Off as amended; where that breaks something, the first time that breaks nothing. */
      readonly departs: string | null;
    }
  | { readonly state: 'not checked'; readonly why: string };

const afterMs = 300;

/** Asks the server what an amendment would break, a moment after the last change of it. */
export const useAmendCheck = (flight: string, amendment: Amendment | null): AmendCheck => {
  const wanted = amendment === null ? null : JSON.stringify(amendment);
  const [answer, setAnswer] = useState<{ readonly of: string; readonly check: AmendCheck }>();
  useEffect(() => {
    if (wanted === null) return;
    let isOver = false;
    const ask = async () => {
      const check = await checked(flight, wanted);
      if (!isOver) setAnswer({ of: wanted, check });
    };
    const timer = setTimeout(() => void ask(), afterMs);
    return () => {
      isOver = true;
      clearTimeout(timer);
    };
  }, [flight, wanted]);
  if (wanted === null) return { state: 'nothing to check' };
  return answer?.of === wanted ? answer.check : { state: 'checking' };
};

const checked = async (flight: string, amendment: string): Promise<AmendCheck> => {
  try {
    const path = `/api/flights/${encodeURIComponent(flight)}/amend/check`;
    const { body } = await post(path, JSON.parse(amendment), { schema: answerSchema });
    return { state: 'checked', ...body };
  } catch (error) {
    if (!(error instanceof ApiProblem)) throw error;
    if (error.faults.length > 0) return { state: 'checked', faults: error.faults, departs: null };
    return { state: 'not checked', why: `${error.what}. ${error.next}` };
  }
};

/** Why it cannot be sent yet; undefined: it can. */
export const offWords = (amendment: Amendment | null, check: AmendCheck): string | undefined => {
  if (amendment === null) return 'Nothing is changed yet.';
  if (check.state === 'checking') return 'Being checked.';
  if (check.state === 'checked' && check.faults.length > 0) return 'It would break a limit: see above.';
  return undefined;
};

interface BreaksProps {
  readonly check: AmendCheck;
  /** What the faults are about anyway is not said again. */
  readonly flight: string;
  readonly onFreeTime: (departs: string) => void;
}

export const Breaks = ({ check, flight, onFreeTime }: BreaksProps) => (
  <div role="status" className="breaks">
    {check.state === 'checking' && <p className="slate">Checking...</p>}
    {check.state === 'not checked' && <p>{check.why}</p>}
    {check.state === 'checked' && check.faults.length === 0 && (
      <p className="pine">
        Nothing breaks.{check.departs !== null && ` ${flight} goes off at ${check.departs}.`}
      </p>
    )}
    {check.state === 'checked' && check.faults.length > 0 && (
      <>
        <ul>
          {check.faults.map(({ path, problem, remedy }) => (
            <li key={path + problem}>
              <b className="plum">Breaks:</b> {path.replace(`${flight}, `, '')}: {problem} {remedy}
            </li>
          ))}
        </ul>
        <FreeTime departs={check.departs} onTake={onFreeTime} />
      </>
    )}
  </div>
);

const FreeTime = ({
  departs,
  onTake,
}: {
  readonly departs: string | null;
  readonly onTake: (departs: string) => void;
}) =>
  departs !== null && (
    <p>
      Nothing breaks at {departs}.{' '}
      <Button small onPress={() => onTake(departs)}>
        Off at {departs}
      </Button>
    </p>
  );
