import type { CheckedLimits } from '@drumline/contract/answers';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { z } from 'zod';
import { ApiProblem, type FieldFault, partOf, post } from '../../../api/index.js';

const drumsSchema = z.object({
  base: z.string(),
  strip: z.string(),
  type: z.string(),
  dry: z.number().nullable(),
  soft: z.number().nullable(),
});
export type DrumsFrom = z.output<typeof drumsSchema>;

const checkedSchema = partOf<CheckedLimits>()(
  z.object({
    drums: z.array(drumsSchema),
    faults: z.array(
      z.object({
        path: z.string(),
        problem: z.string(),
        remedy: z.string(),
        place: z.string(),
        type: z.string(),
      }),
    ),
  }),
);

export interface LimitFault extends FieldFault {
  readonly id: string;
}

interface Checked {
  readonly drums: readonly DrumsFrom[];
  readonly faults: readonly LimitFault[];
}

type Changed = readonly { readonly id: string; readonly limit: object }[];

const check = async (changed: Changed): Promise<Checked> => {
  try {
    const stripLimits = changed.map(({ limit }) => limit);
    const { body } = await post('/api/payload', { stripLimits }, { schema: checkedSchema });
    return {
      drums: body.drums,
      faults: body.faults.map((fault) => ({ ...fault, id: `${fault.place}-${fault.type}` })),
    };
  } catch (error) {
    if (!(error instanceof ApiProblem) || error.faults.length === 0) throw error;
    return { drums: [], faults: error.faults.flatMap((fault) => ofLine(fault, changed)) };
  }
};

const ofLine = (fault: FieldFault, changed: Changed): readonly LimitFault[] => {
  const [, at, path = ''] = /^stripLimits\[(\d+)\]\.?(.*)$/.exec(fault.path) ?? [];
  return at === undefined ? [] : [{ ...fault, path, id: changed[Number(at)]!.id }];
};

/** Drums that the limits in force let go, and those that they would with what is typed; the last answer stays meanwhile. */
export const usePayload = (changed: Changed): Checked | undefined =>
  useQuery({
    queryKey: ['/api/strip-limits', 'payload', JSON.stringify(changed)],
    queryFn: () => check(changed),
    placeholderData: keepPreviousData,
    retry: false,
  }).data;

/** "6, 4": dry and soft. */
export const drumWords = ({ dry, soft }: Pick<DrumsFrom, 'dry' | 'soft'>): string =>
  `${dry ?? 'none'}, ${soft ?? 'closed'}`;

/** Where the draft carries more or fewer drums than the limits in force. */
export const changedDrums = (inForce: readonly DrumsFrom[], draft: readonly DrumsFrom[]): readonly string[] =>
  draft.flatMap((row) => {
    const was = inForce.find(
      (each) => each.base === row.base && each.strip === row.strip && each.type === row.type,
    );
    const before = was === undefined ? 'not approved' : drumWords(was);
    const after = drumWords(row);
    return before === after ? [] : [`${row.strip} ${row.type} from ${row.base}: ${before} to ${after} drums`];
  });
