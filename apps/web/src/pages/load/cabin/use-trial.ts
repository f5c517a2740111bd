import { useState } from 'react';
import type { Placed } from '../load-read.js';
import type { LoadActs } from '../use-load-acts.js';
import type { Trial } from './moving.js';
import { exchanged } from './standing.js';

export interface Trying {
  readonly trial: Trial | null;
  readonly begin: () => void;
  readonly leave: () => void;
  readonly choose: (position: string) => void;
  readonly put: (placed: readonly Placed[]) => void;
}

/** Moving drums about: two presses change two places over, and every standing is asked about at once. */
export const useTrial = (kept: readonly Placed[], acts: LoadActs): Trying => {
  const [trial, setTrial] = useState<Trial | null>(null);
  const put = (placed: readonly Placed[]) => {
    setTrial({ placed, standing: undefined, chosen: null });
    void acts.check
      .run(placed)
      .then((standing) => setTrial((now) => (now?.placed === placed ? { ...now, standing } : now)));
  };
  return {
    trial,
    put,
    begin: () => {
      acts.clear();
      setTrial({ placed: kept, standing: undefined, chosen: null });
    },
    leave: () => {
      acts.clear();
      setTrial(null);
    },
    choose: (position) => {
      if (trial === null) return;
      const { placed, chosen } = trial;
      if (chosen === null || chosen === position)
        setTrial({ ...trial, chosen: chosen === position ? null : position });
      else put(exchanged(placed, chosen, position));
    },
  };
};
