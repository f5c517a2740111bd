/** How far a stock figure is to be trusted. */
export type Confidence = 'high' | 'medium' | 'low';

/** What speaks for and against a figure. */
export interface Evidence {
  /** Age of the last count; null: never counted. */
  readonly countAgeHours: number | null;
  readonly seenFrom: 'ground' | 'air';
  /** Count and book differ beyond the tolerance, and no entry explains it. */
  readonly isDisputed: boolean;
  /** Phones of the field that have not been heard from for `silentHours`. */
  readonly silentPhones: number;
}

export interface JudgedConfidence {
  readonly confidence: Confidence;
  /** What keeps it from being high, each a sentence; empty: nothing. */
  readonly why: readonly string[];
}

/** A phone that has been silent for longer may hold reports that nobody knows of. */
export const silentHours = 24;

/** From then on a count is old: the next crew is asked for one. */
export const freshCountHours = 7 * 24;
const oldHours = 14 * 24;

/**
 * Confidence of the stock of a place (conventions, "Confidence of stock"; common practice, no source): high, less a
 * step for each thing that speaks against it; a place that was never counted or whose figures are disputed is low.
 */
export function stockConfidence({
  countAgeHours,
  seenFrom,
  isDisputed,
  silentPhones,
}: Evidence): JudgedConfidence {
  if (countAgeHours === null) return { confidence: 'low', why: ['It was never counted.'] };
  const reasons: readonly (readonly [steps: number, why: string, is: boolean])[] = [
    [2, 'Count and book differ, and no entry explains it.', isDisputed],
    [2, 'The last count is more than 14 days old.', countAgeHours > oldHours],
    [
      1,
      'The last count is more than 7 days old.',
      countAgeHours > freshCountHours && countAgeHours <= oldHours,
    ],
    [1, 'The last count was made from the air.', seenFrom === 'air'],
    [1, `${silentPhones} phones not heard from for ${silentHours} h may hold reports.`, silentPhones > 0],
  ];
  const found = reasons.filter(([, , is]) => is);
  const steps = found.reduce((sum, [step]) => sum + step, 0);
  return {
    confidence: steps === 0 ? 'high' : steps === 1 ? 'medium' : 'low',
    why: found.map(([, why]) => why),
  };
}
