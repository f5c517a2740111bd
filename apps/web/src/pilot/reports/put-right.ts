import type { DrumCorrection, DrumDone } from '../drums-here/drum-reports.js';
import type { ReportedDrum } from './own-reports.js';

/** By the id of a report what is so in its place; null: nothing of that drum. Those that are not in it are right. */
export type Right = Readonly<Record<string, DrumCorrection['right']>>;

/** What is so of a drum; null: nothing. */
export const rightOf = (drum: ReportedDrum, right: Right): (DrumDone & { readonly place: string }) | null => {
  const given = right[drum.id];
  return given === undefined ? drum : given === null ? null : { drum: drum.drum, ...given };
};

/** Everything that was left was left in another place. */
export const toPlace = (said: readonly ReportedDrum[], right: Right, place: string): Right => ({
  ...right,
  ...Object.fromEntries(
    said.flatMap((drum) => {
      const now = rightOf(drum, right);
      if (now === null || now.kind !== 'left at') return [];
      return [[drum.id, { kind: now.kind, condition: now.condition, place }]];
    }),
  ),
});

/** The reports that are other than what is so. A drum that was brought back has no place to be wrong about. */
export const changedOnly = (said: readonly ReportedDrum[], right: Right): readonly DrumCorrection[] =>
  said.flatMap((wrong): readonly DrumCorrection[] => {
    const now = rightOf(wrong, right);
    if (now === null) return [{ wrong, right: null }];
    const { kind, condition, place } = now;
    const isSame =
      kind === wrong.kind &&
      condition === wrong.condition &&
      (kind === 'brought home' || place === wrong.place);
    return isSame ? [] : [{ wrong, right: { kind, condition, place } }];
  });
