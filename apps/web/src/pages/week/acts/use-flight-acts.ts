import { type Act, type ApiProblem, post, put, remove, useAct } from '../../../api/index.js';
import type { WeekFlight } from '../week-read.js';
import type { Amendment } from './amendment.js';

/** What the office does with a flight, each act at the version that is shown. */
export interface FlightActs {
  readonly approve: Act<[WeekFlight], unknown>;
  readonly give: Act<[WeekFlight], unknown>;
  readonly hold: Act<[WeekFlight], unknown>;
  readonly keep: Act<[WeekFlight, string], unknown>;
  readonly amend: Act<[WeekFlight, Amendment], unknown>;
  readonly letGo: Act<[readonly WeekFlight[], string], unknown>;
  readonly isSending: boolean;
  readonly problem: ApiProblem | undefined;
  readonly clear: () => void;
}

const path = ({ id }: WeekFlight, act: string): string => `/api/flights/${encodeURIComponent(id)}/${act}`;
const at = ({ revision }: WeekFlight) => ({ version: revision });

/** An act that wants a reason. Throws an ApiProblem where it is refused. */
export const withReason = (flight: WeekFlight, act: 'decline' | 'call-off' | 'keep', reason: string) =>
  post(path(flight, act), { reason }, at(flight));

export const useFlightActs = (): FlightActs => {
  const approve = useAct((flight: WeekFlight) => post(path(flight, 'approve'), {}, at(flight)));
  const give = useAct((flight: WeekFlight) => post(path(flight, 'give'), {}, at(flight)));
  const hold = useAct((flight: WeekFlight) =>
    flight.heldInPlace
      ? remove(path(flight, 'hold'), undefined, at(flight))
      : put(path(flight, 'hold'), {}, at(flight)),
  );
  const keep = useAct((flight: WeekFlight, reason: string) => withReason(flight, 'keep', reason));
  const amend = useAct((flight: WeekFlight, amendment: Amendment) =>
    post(path(flight, 'amend'), amendment, at(flight)),
  );
  const letGo = useAct((flights: readonly WeekFlight[], reason: string) =>
    post('/api/flights/let-go', { flights: flights.map(({ id, revision }) => ({ id, revision })), reason }),
  );
  const acts = [approve, give, hold, keep, amend, letGo];
  return {
    approve,
    give,
    hold,
    keep,
    amend,
    letGo,
    isSending: acts.some(({ isSending }) => isSending),
    problem: acts.find(({ problem }) => problem !== undefined)?.problem,
    clear: () => {
      for (const { clear } of acts) clear();
    },
  };
};
