import { type Act, type ApiProblem, post, put, useAct } from '../../api/index.js';
import { type LoadedFlight, type Placed, type Standing, standingSchema } from './load-read.js';

interface Amendment {
  readonly stops?: readonly {
    readonly place: string;
    readonly drums: number;
    readonly numbers: readonly string[];
  }[];
  readonly pilot?: string;
}

/** What is done with a flight on its load page, each act at the version that is shown. */
export interface LoadActs {
  readonly give: Act<[], unknown>;
  readonly amend: Act<[Amendment], unknown>;
  readonly check: Act<[readonly Placed[]], Standing>;
  readonly setPositions: Act<[readonly Placed[]], unknown>;
  readonly isSending: boolean;
  readonly problem: ApiProblem | undefined;
  readonly clear: () => void;
}

export const useLoadActs = ({ id, revision }: Pick<LoadedFlight, 'id' | 'revision'>): LoadActs => {
  const path = `/api/flights/${encodeURIComponent(id)}`;
  const at = { version: revision };
  const give = useAct(() => post(`${path}/give`, {}, at));
  const amend = useAct((amendment: Amendment) => post(`${path}/amend`, amendment, at));
  const check = useAct(async (positions: readonly Placed[]) => {
    const answer = await post(`${path}/load/check`, { positions }, { schema: standingSchema });
    return answer.body;
  });
  const setPositions = useAct((positions: readonly Placed[]) => put(`${path}/positions`, { positions }, at));
  const acts = [give, amend, check, setPositions];
  return {
    give,
    amend,
    check,
    setPositions,
    isSending: acts.some(({ isSending }) => isSending),
    problem: acts.find(({ problem }) => problem !== undefined)?.problem,
    clear: () => {
      for (const { clear } of acts) clear();
    },
  };
};
