import type { LoadFactors, TieDownKit } from './tie-down.js';

/** What the operator cites for tying loads in a type of aeroplane. */
export interface TieDownSetting {
  /** `everyType`: for each type that has none of its own. */
  readonly type: string;
  readonly factors: LoadFactors;
  readonly kit: TieDownKit;
}

export const everyType = 'every type';

/** The setting that holds for a type: its own, else the one for every type; null: the operator has given neither. */
export const tieDownFor = (settings: readonly TieDownSetting[], type: string): TieDownSetting | null =>
  settings.find((each) => each.type === type) ?? settings.find((each) => each.type === everyType) ?? null;
