import type { SameReport } from '@drumline/contract';
import type { KeptRequest } from './kept.js';

export interface AlsoReported {
  readonly by: string;
  /** When they first wrote it down. */
  readonly at: string;
}

/** Who else has reported what stands in these requests, each person once, the first to write it first. */
export const alsoReported = (
  requests: readonly Pick<KeptRequest, 'path'>[],
  same: readonly SameReport[],
): readonly AlsoReported[] => {
  const own = new Set(requests.map(({ path }) => path));
  const others = same
    .filter(({ movement }) => own.has(`/api/movements/${movement}`))
    .toSorted((one, other) => Date.parse(one.writtenAt) - Date.parse(other.writtenAt));
  return [...new Set(others.map(({ by }) => by))].map((by) => ({
    by,
    at: others.find((each) => each.by === by)!.writtenAt,
  }));
};
