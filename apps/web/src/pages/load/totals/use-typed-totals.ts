import { useQuery } from '@tanstack/react-query';
import { ApiProblem, post, useDraft, useMe } from '../../../api/index.js';
import { type LoadedFlight, type Totals, totalsSchema } from '../load-read.js';
import { poundsTyped, type Signatures, unsigned } from './loaded.js';

/** One total as somebody types it, and the sheet's beside it once they have asked. */
export interface TypedTotal {
  readonly typed: string;
  readonly lb: number | undefined;
  /** Undefined: not compared yet; the sheet's figure is not told before. */
  readonly answer: Totals | undefined;
  readonly isAsking: boolean;
  readonly problem: ApiProblem | undefined;
  readonly type: (typed: string) => void;
  readonly compare: () => void;
}

export interface TypedTotals {
  readonly load: TypedTotal;
  readonly takeOff: TypedTotal;
  readonly signatures: Signatures;
  readonly sign: (signatures: Signatures) => void;
  readonly isBegun: boolean;
  readonly discard: () => void;
}

/** What is typed for a version of a flight: it outlives a reload until it is loaded or discarded, for whoever typed it. */
export const useTypedTotals = ({ id, version }: Pick<LoadedFlight, 'id' | 'version'>): TypedTotals => {
  const name = `${useMe().id} loaded ${id} ${version}`;
  const [load, forgetLoad] = useTyped(id, 'load', `${name} load`);
  const [takeOff, forgetTakeOff] = useTyped(id, 'take-off weight', `${name} take-off`);
  const [signatures, writeSignatures] = useDraft<Signatures>(`${name} signatures`, unsigned);
  return {
    load,
    takeOff,
    signatures,
    sign: writeSignatures,
    isBegun: [load.typed, takeOff.typed, ...Object.values(signatures)].some((text) => text !== ''),
    discard: () => {
      forgetLoad();
      forgetTakeOff();
      writeSignatures(null);
    },
  };
};

/** What stands in the field, and whether it was compared: the sheet's figure itself is asked for anew, and kept nowhere. */
interface Written {
  readonly typed: string;
  readonly compared: boolean;
}

const nothing: Written = { typed: '', compared: false };

const useTyped = (flight: string, of: Totals['of'], name: string): readonly [TypedTotal, () => void] => {
  const [{ typed, compared }, write] = useDraft<Written>(name, nothing);
  const lb = poundsTyped(typed);
  const asked = useQuery({
    queryKey: ['totals', name, lb],
    queryFn: async () => {
      const path = `/api/flights/${encodeURIComponent(flight)}/totals`;
      return (await post(path, { of, typedLb: lb }, { schema: totalsSchema })).body;
    },
    enabled: compared && lb !== undefined,
    retry: false,
    staleTime: 0,
  });
  const total: TypedTotal = {
    typed,
    lb,
    answer: compared ? asked.data : undefined,
    isAsking: compared && asked.isFetching,
    problem: compared && asked.error instanceof ApiProblem ? asked.error : undefined,
    type: (text) => write({ typed: text, compared: false }),
    compare: () => {
      if (lb === undefined) return;
      if (compared) void asked.refetch();
      else write({ typed, compared: true });
    },
  };
  return [total, () => write(null)];
};
