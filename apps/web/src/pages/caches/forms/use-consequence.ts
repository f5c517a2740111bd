import { useEffect, useState } from 'react';
import { ApiProblem, post } from '../../../api/index.js';
import { type Consequence, consequenceSchema } from '../caches-read.js';

export type Asked =
  | { readonly state: 'nothing to ask' | 'checking' }
  | { readonly state: 'answered'; readonly consequence: Consequence }
  | { readonly state: 'not answered'; readonly why: string };

const afterMs = 300;

/** Asks the server what a change would do to the caches, a moment after it was last touched. */
export const useConsequence = (change: object | null): Asked => {
  const wanted = change === null ? null : JSON.stringify(change);
  const [answer, setAnswer] = useState<{ readonly of: string; readonly asked: Asked }>();
  useEffect(() => {
    if (wanted === null) return;
    let isOver = false;
    const timer = setTimeout(
      () =>
        void ask(wanted).then((asked) => {
          if (!isOver) setAnswer({ of: wanted, asked });
        }),
      afterMs,
    );
    return () => {
      isOver = true;
      clearTimeout(timer);
    };
  }, [wanted]);
  if (wanted === null) return { state: 'nothing to ask' };
  return answer?.of === wanted ? answer.asked : { state: 'checking' };
};

const ask = async (change: string): Promise<Asked> => {
  try {
    const answer = await post('/api/projections/consequence', JSON.parse(change), {
      schema: consequenceSchema,
    });
    return { state: 'answered', consequence: answer.body };
  } catch (error) {
    if (!(error instanceof ApiProblem)) throw error;
    const faults = error.faults.map(({ path, problem }) => `${path}: ${problem}`).join(' ');
    return { state: 'not answered', why: `${error.what}. ${error.why} ${faults}` };
  }
};
