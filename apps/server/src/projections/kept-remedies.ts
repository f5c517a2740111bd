import { isDeepStrictEqual } from 'node:util';
import type { SlingRemedyAnswer } from '@drumline/contract';
import type { SlingMove, SlingRemedy } from '@drumline/planning';

interface Entry {
  readonly id: string;
  readonly version: number;
  readonly data: unknown;
}

/** Each with the line of the programme that would be moved; one of a change that is not made yet has none. */
export const withKeptSlings = (
  remedies: readonly SlingRemedy[],
  entries: readonly Entry[],
): readonly SlingRemedyAnswer[] =>
  remedies.map((remedy) => {
    const found = entries.find(({ data }) => isSame(data as SlingMove, remedy.sling));
    if (found === undefined) return { ...remedy, kept: null };
    const { id, version, data } = found;
    return { ...remedy, kept: { id, version, data: data as SlingMove } };
  });

/** Some of its drums may have been flown since. */
const isSame = (kept: SlingMove, { drums: _, ...sling }: SlingMove): boolean => {
  const { drums: _drums, ...rest } = kept;
  return isDeepStrictEqual(rest, sling);
};
