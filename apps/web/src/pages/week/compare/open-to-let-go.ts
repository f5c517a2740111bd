import type { FoundPlan } from '../plan/plan-read.js';

interface Standing {
  readonly id: string;
  readonly state: string;
  readonly needsDecision: string | null;
}

/**
 * Frozen flights that the plan counts on and that cannot be flown as they stand, while nobody has decided on them: neither
 * let go, nor kept, nor called off.
 */
export const openToLetGo = <Flight extends Standing>(
  { needsDecision }: Pick<FoundPlan, 'needsDecision'>,
  flights: readonly Flight[],
): readonly Flight[] => {
  const named = new Set(needsDecision.map(({ flight }) => flight));
  return flights.filter(
    ({ id, state, needsDecision: mark }) =>
      named.has(id) && mark !== null && (state === 'approved' || state === 'given'),
  );
};
